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

  /** Four mice of a litre each, a delivery of three at most; whole litres beside tenths. */
  @Test
  void litres_in_a_column_all_have_a_decimal() {
    assertThat(freezer().out().lines().map(line -> line.strip().replaceAll(" +", " ")))
        .anyMatch(line -> line.startsWith("Chest 3.0 3.0 100 %"))
        .contains("Wed 1 Jan 2031 0.0 0.0")
        .anyMatch(line -> line.startsWith("3.0 ") && line.endsWith("<- as it is"));
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

  private void bagsOf(int pieces) {
    String bag = "Mouse,mouse,adult,50,50,50,%d,50.00\n".formatted(pieces);
    new OneMouseShop(
            bag,
            new OneMouseShop.Extras("", ", \"meals\": \"all\""),
            new OneMouseShop.Keeping(182, 3))
        .write(folder);
  }

  /** A mouse takes a litre: a bag of fifty does not go into three, and is checked whole. */
  @Test
  void where_nothing_fits_it_names_the_clash_and_says_what_to_do() throws IOException {
    bagsOf(50);
    CommandRun run = freezer();
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out())
        .startsWith("Frostlot: no plan for One mouse\n")
        .contains(
            "No plan can keep all of these at once",
            "Chest holds 3 l",
            "WHAT TO DO WHERE IT DOES NOT FIT",
            "With 50 litres in Chest, in place of 3, there is a plan",
            "policy.meals");
    CommandRun json = freezer("--format", "json");
    assertThat(json.exitCode()).isEqualTo(3);
    assertThat(new ObjectMapper().readTree(json.out()).at("/status").asText())
        .isEqualTo("impossible");
  }

  /** A bag of six goes into six litres and, being checked whole, into none less. */
  @Test
  void where_nothing_fits_it_looks_for_the_least_room_and_names_the_other_freezer() {
    bagsOf(6);
    assertThat(freezer("--more-litres", "10").out().replaceAll("\\s+", " "))
        .contains(
            "With 6 litres in Chest, in place of 3, there is a plan; with 5.9 there is none.",
            "With one more deep freezer of 10 litres there is a plan; what it saves cannot be told");
    assertThat(freezer("--more-litres", "2").out().replaceAll("\\s+", " "))
        .contains("One more deep freezer of 2 litres makes no plan possible.");
    assertThat(freezer().out()).doesNotContain("more deep freezer");
  }

  /** The shop sells one mouse that is too heavy for anybody, so room is not what lacks. */
  @Test
  void where_room_does_not_help_it_says_so() {
    new OneMouseShop(
            "Mouse,mouse,adult,150,150,150,1,1.00\n",
            new OneMouseShop.Extras("", ", \"meals\": \"all\""),
            new OneMouseShop.Keeping(182, 3))
        .write(folder);
    assertThat(freezer().out()).contains("No room in Chest makes a plan possible.");
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
