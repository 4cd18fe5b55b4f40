package io.frostlot.cli;

import static io.frostlot.cli.CommandRun.GOOD;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.frostlot.app.Planner;
import io.frostlot.plan.Answer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands with planners that answer at once. */
class CommandsTest {
  @TempDir Path folder;

  @Test
  void a_plan_is_printed_as_a_letter_and_then_compared_with_habits() {
    CommandRun run = CommandRun.of("plan", GOOD);
    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .startsWith("Frostlot: what to order for Reading room\n")
        .contains(
            "ORDER NEXT",
            "THE SIMPLEST PLAN WITHIN 2 %",
            "COMPARED WITH HABITS",
            "everything from Hillside Hatch (invented)");
    assertThat(run.err()).isEmpty();
    assertThat(CommandRun.of("plan", GOOD, "--plan-only").out())
        .contains("ORDER NEXT")
        .doesNotContain("THE SIMPLEST PLAN", "COMPARED WITH HABITS");
  }

  @Test
  void json_is_alone_on_standard_output() throws IOException {
    CommandRun run = CommandRun.of(new OnePackPlanner(), true, "plan", GOOD, "--format", "json");
    assertThat(run.exitCode()).isZero();
    assertThat(new ObjectMapper().readTree(run.out()).get("status").asText())
        .isEqualTo("best-found");
    assertThat(run.err()).contains("s  best ");
  }

  @Test
  void json_holds_what_was_looked_for_besides() throws IOException {
    CommandRun run = CommandRun.of("plan", GOOD, "--format", "json");
    JsonNode plan = new ObjectMapper().readTree(run.out());
    assertThat(plan.at("/simplest/withinPercent").asInt()).isEqualTo(2);
    assertThat(plan.at("/simplest/plan").isNull()).isTrue();
    assertThat(plan.at("/habits/compared/0/habit").asText())
        .contains("everything from Hillside Hatch");
    CommandRun alone = CommandRun.of("plan", GOOD, "--format", "json", "--plan-only");
    assertThat(new ObjectMapper().readTree(alone.out()).fieldNames())
        .toIterable()
        .doesNotContain("simplest", "habits", "withoutBudget");
  }

  @Test
  void progress_is_said_only_to_those_who_look_on_or_ask() {
    assertThat(CommandRun.of("plan", GOOD, "--format", "json").err()).isEmpty();
    assertThat(CommandRun.of("plan", GOOD, "--format", "json", "--progress").err())
        .containsPattern("^ +0\\.\\d s  best [0-9.]+ EUR  \\d+ meals unmet\n$");
  }

  @Test
  void an_order_sheet_is_printed_or_written_for_each_supplier() throws IOException {
    CommandRun printed = CommandRun.of("plan", GOOD, "--format", "csv");
    assertThat(printed.exitCode()).isZero();
    assertThat(printed.out()).startsWith("supplier,supplier_name,order_by").hasLineCount(2);

    Path sheets = folder.resolve("new/sheets");
    CommandRun written = CommandRun.of("plan", GOOD, "--format", "csv", "--out", sheets.toString());
    assertThat(written.exitCode()).isZero();
    assertThat(written.out()).isEmpty();
    try (Stream<Path> files = Files.list(sheets)) {
      List<Path> all = files.toList();
      assertThat(all).singleElement().satisfies(it -> assertThat(it).hasFileName("corner.csv"));
      assertThat(Files.readString(all.get(0))).isEqualTo(printed.out());
    }
  }

  @Test
  void a_file_in_the_place_of_the_folder_for_sheets_is_left_alone() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "mine");
    CommandRun run = CommandRun.of("plan", GOOD, "--format", "csv", "--out", file.toString());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("expected a folder", "nothing was planned");
    assertThat(file).hasContent("mine");
  }

  @Test
  void an_impossible_plan_ends_with_three_and_the_clash() {
    Planner planner =
        (world, limits, watch) -> new Answer.Impossible(List.of("Chest holds 3 l."), true);
    CommandRun text = CommandRun.of(planner, false, "plan", GOOD);
    assertThat(text.exitCode()).isEqualTo(3);
    assertThat(text.out())
        .contains("- Chest holds 3 l.", "Without any one of them the others could be kept.");
    CommandRun json = CommandRun.of(planner, false, "plan", GOOD, "--format", "json");
    assertThat(json.exitCode()).isEqualTo(3);
    assertThat(json.out()).contains("\"status\": \"impossible\"");
    CommandRun csv = CommandRun.of(planner, false, "plan", GOOD, "--format", "csv");
    assertThat(csv.exitCode()).isEqualTo(3);
    assertThat(csv.out()).isEmpty();
    assertThat(csv.err()).contains("Chest holds 3 l.");
  }

  @Test
  void no_plan_in_time_ends_with_four() {
    Planner planner = (world, limits, watch) -> new Answer.NothingFound();
    CommandRun run = CommandRun.of(planner, false, "plan", GOOD);
    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.out()).contains("No plan was found in the time given.");
  }

  @Test
  void the_time_is_thirty_seconds_unless_said_otherwise() {
    StringBuilder seen = new StringBuilder();
    Planner planner =
        (world, limits, watch) -> {
          seen.append(limits.time().toMillis()).append(' ').append(limits.rounds()).append('\n');
          return new Answer.NothingFound();
        };
    CommandRun.of(planner, false, "plan", GOOD);
    CommandRun.of(planner, false, "plan", GOOD, "--seconds", "1.5", "--effort", "7");
    CommandRun.of(planner, false, "plan", GOOD, "--effort", "7");
    assertThat(seen)
        .hasToString("30000 OptionalInt.empty\n1500 OptionalInt[7]\n1000000000 OptionalInt[7]\n");
  }

  @Test
  void an_earlier_plan_is_compared_with() throws IOException {
    String json = CommandRun.of("plan", GOOD, "--format", "json").out();
    Path earlier = Files.writeString(folder.resolve("plan.json"), json);
    assertThat(CommandRun.of("plan", GOOD, "--since", earlier.toString()).out())
        .contains("Nothing: same meals, same orders, same money.")
        .doesNotContain("stale");

    Files.writeString(earlier, json.replaceAll("\"digest\": \"....", "\"digest\": \"0123"));
    assertThat(CommandRun.of("plan", GOOD, "--since", earlier.toString()).out())
        .contains("The earlier plan is stale");
    String compared =
        CommandRun.of("plan", GOOD, "--since", earlier.toString(), "--format", "json").out();
    assertThat(new ObjectMapper().readTree(compared).at("/changes/stale").asBoolean()).isTrue();

    Files.writeString(earlier, json.replace("\"EUR\"", "\"USD\""));
    CommandRun run = CommandRun.of("plan", GOOD, "--since", earlier.toString());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("found \"USD\", expected EUR, as in the scenario.");
  }

  @Test
  void help_names_every_option_and_exit_code() {
    assertThat(CommandRun.of("plan", "--help").out())
        .contains("--profiles", "--format", "--seconds", "--effort", "--since", "--out")
        .doesNotContain("sign");
    for (String command : List.of("plan", "share", "sale", "freezer", "compare", "explain")) {
      assertThat(CommandRun.of(command, "--help").out())
          .as(command)
          .contains("Exit codes:", "2   input problems", "3   ", "4   no plan in the time given");
    }
    assertThat(CommandRun.of("--version").out()).startsWith("Frostlot ");
  }
}
