package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.program.Glop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who may take over what after it was ordered; bags of mice are not cut here. */
class TakenOverTest {
  @TempDir Path folder;

  @BeforeEach
  void group() throws IOException {
    new InvoiceSamples(new GroupSamples(folder)).group("\"way\": \"equal\"");
    Path group = folder.resolve("group.json");
    String text = Files.readString(group);
    Files.writeString(group, text.replaceAll("\"cutting\": \\[[^\\]]*]", "\"cutting\": []"));
  }

  private SettleBox.Outcome takes(String member, int pieces) throws IOException {
    Path invoice =
        new InvoiceSamples(new GroupSamples(folder)).invoice(InvoiceSamples.taken(member, pieces));
    return new SettleBox(new Glop())
        .settle(folder, invoice, List.of(folder.resolve("supplier-profiles")));
  }

  @Test
  void a_part_of_it_cannot_be_taken_over() throws IOException {
    assertThat(problems("bo"))
        .contains("found 5, expected all 10: a bag of Mouse x10 may not be cut")
        .contains("cutting in group.json");
  }

  @Test
  void all_of_it_can() throws IOException {
    assertThat(takes("bo", 10)).isInstanceOf(SettleBox.Done.class);
  }

  @Test
  void who_joins_late_is_told_to_become_a_member() throws IOException {
    assertThat(problems("eve"))
        .contains("found \"eve\", expected one of the members ann, bo, cy, dee. Whoever joins late")
        .contains("added to the members in group.json");
  }

  private String problems(String takesFive) throws IOException {
    SettleBox.Outcome outcome = takes(takesFive, 5);
    assertThat(outcome).isInstanceOf(SettleBox.Refused.class);
    return ((SettleBox.Refused) outcome).problems().toString();
  }
}
