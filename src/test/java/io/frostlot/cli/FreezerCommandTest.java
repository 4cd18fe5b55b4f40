package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import io.frostlot.app.EnginePlanner;
import io.frostlot.app.OneMouseShop;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code freezer}, with the engine itself, on one mouse a week. */
class FreezerCommandTest {
  @TempDir Path folder;

  @BeforeEach
  void write() {
    new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(182, 3)).write(folder);
  }

  private CommandRun freezer(String... options) {
    List<String> all = new ArrayList<>(List.of("freezer", folder.toString(), "--seconds", "600"));
    all.addAll(List.of(options));
    return CommandRun.of(new EnginePlanner(), false, all.toArray(String[]::new));
  }

  @Test
  void says_how_full_what_fits_and_what_a_failure_costs_with_cautions() {
    CommandRun run = freezer("--more-litres", "10", "--costs", "150");
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .startsWith("Frostlot: the freezers of One mouse\n")
        .contains(
            "HOW FULL",
            "THE LARGEST DELIVERY THAT FITS BESIDE THE PLAN",
            "IF CHEST FAILS ON",
            "MONEY AGAINST THE ROOM OF CHEST",
            "<- as it is",
            "more room gains nothing.",
            "DOES IT FIT?",
            "ONE MORE DEEP FREEZER OF 10 LITRES",
            "Dry ice (-78.5 C)");
  }

  @Test
  void json_follows_its_schema_and_is_alone() throws IOException {
    CommandRun run = freezer("--more-litres", "10", "--format", "json");
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertThat(
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(
                    FreezerCommandTest.class.getResourceAsStream(
                        "/io/frostlot/schema/freezer.schema.json"))
                .validate(json))
        .isEmpty();
    assertThat(json.at("/curve/points").size()).isGreaterThan(3);
    assertThat(json.at("/free")).hasSize(4);
  }

  @Test
  void csv_is_the_room_by_day() {
    assertThat(freezer("--format", "csv").out())
        .startsWith("freezer,day,litres_taken,litres_free\r\nChest,2031-01-01,");
  }

  @Test
  void what_is_typed_wrong_is_said() {
    assertThat(freezer("--freezer", "Attic").err())
        .contains("--freezer: found \"Attic\", expected one of [Chest]");
    assertThat(freezer("--fails-on", "2040-01-01").err()).contains("expected a planning day");
    assertThat(freezer("--more-litres", "-1").err()).contains("--more-litres: found -1");
    assertThat(freezer("--costs", "100").err()).contains("go with --more-litres");
    assertThat(freezer("--running-per-year", "10").err()).contains("go with --more-litres");
  }
}
