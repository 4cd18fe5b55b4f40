package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The table of fields in the README says what the schemas say, field by field. */
class ReadmeTest {
  @Test
  void every_field_stands_in_the_readme_as_its_schema_has_it() {
    String rows = String.join("\n", FieldRows.all());

    assertThat(Samples.text(Path.of("README.md")))
        .as("rows as they should stand:\n" + rows)
        .contains(rows);
  }

  @Test
  void every_shipped_band_stands_in_the_readme() {
    assertThat(Samples.text(Path.of("README.md"))).contains(String.join("\n", FieldRows.bands()));
  }
}
