package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.frostlot.app.Planner;
import io.frostlot.plan.Answer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands with planners that answer at once. */
class CommandsTest {
  private static final String GOOD = "src/test/resources/io/frostlot/files/good";
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @TempDir Path folder;

  private int run(Planner planner, boolean watched, String... arguments) {
    out.reset();
    err.reset();
    Terminal terminal =
        new Terminal(
            new PrintStream(out, false, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            watched,
            80);
    int exitCode = Commands.run(planner, terminal, new Interruption(), arguments);
    terminal.out().flush();
    return exitCode;
  }

  private int run(String... arguments) {
    return run(new OnePackPlanner(), false, arguments);
  }

  private String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  private Path spoilt(String file, String what, String by) {
    Path copy = folder.resolve("spoilt");
    try (Stream<Path> files = Files.walk(Path.of(GOOD))) {
      for (Path path : files.filter(Files::isRegularFile).toList()) {
        Path target = copy.resolve(Path.of(GOOD).relativize(path).toString());
        Files.createDirectories(target.getParent());
        Files.copy(path, target);
      }
      Path spoilt = copy.resolve(file);
      Files.writeString(spoilt, Files.readString(spoilt).replace(what, by));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return copy;
  }

  @Test
  void a_plan_is_printed_as_a_letter_and_then_compared_with_habits() {
    assertThat(run("plan", GOOD)).isZero();
    assertThat(out())
        .startsWith("Frostlot: what to order for Reading room\n")
        .contains("ORDER NEXT", "COMPARED WITH HABITS", "everything from Hillside Hatch (invented)");
    assertThat(err()).isEmpty();
    assertThat(run("plan", GOOD, "--no-habits")).isZero();
    assertThat(out()).doesNotContain("COMPARED WITH HABITS");
  }

  @Test
  void json_is_alone_on_standard_output() throws IOException {
    assertThat(run(new OnePackPlanner(), true, "plan", GOOD, "--format", "json")).isZero();
    assertThat(new ObjectMapper().readTree(out.toByteArray()).get("status").asText()).isEqualTo("best-found");
    assertThat(err()).contains("s  best ");
  }

  @Test
  void progress_is_said_only_to_those_who_look_on_or_ask() {
    run("plan", GOOD, "--format", "json");
    assertThat(err()).isEmpty();
    run("plan", GOOD, "--format", "json", "--progress");
    assertThat(err()).containsPattern("^ +0\\.\\d s  best [0-9.]+ EUR  \\d+ meals unmet\n$");
  }

  @Test
  void an_order_sheet_is_printed_or_written_for_each_supplier() throws IOException {
    assertThat(run("plan", GOOD, "--format", "csv")).isZero();
    String sheet = out();
    assertThat(sheet).startsWith("supplier,supplier_name,order_by").hasLineCount(2);

    Path sheets = folder.resolve("new/sheets");
    assertThat(run("plan", GOOD, "--format", "csv", "--out", sheets.toString())).isZero();
    assertThat(out()).isEmpty();
    assertThat(sheets).isDirectoryContaining("glob:**.csv");
    try (Stream<Path> files = Files.list(sheets)) {
      assertThat(files.map(file -> read(file)).toList()).containsExactly(sheet);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void a_file_in_the_place_of_the_folder_for_sheets_is_left_alone() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "mine");
    assertThat(run("plan", GOOD, "--format", "csv", "--out", file.toString())).isEqualTo(2);
    assertThat(err()).contains("expected a folder");
    assertThat(file).hasContent("mine");
  }

  @Test
  void problems_are_told_together_and_nothing_is_printed() {
    Path spoilt = spoilt("freezers.csv", "12.5", "a lot");
    assertThat(run("plan", spoilt.toString(), "--since", folder.resolve("no.json").toString())).isEqualTo(2);
    assertThat(out()).isEmpty();
    assertThat(err())
        .contains("freezers.csv line 2, column usable_litres: found \"a lot\"")
        .contains("no.json: found no such file")
        .endsWith("2 problems; nothing was planned.\n");
  }

  @Test
  void an_impossible_plan_ends_with_three_and_the_clash() {
    Planner planner = (world, budget, watch) -> new Answer.Impossible(List.of("Chest holds 3 l."), true);
    assertThat(run(planner, false, "plan", GOOD)).isEqualTo(3);
    assertThat(out()).contains("- Chest holds 3 l.", "With any one of them gone there is a plan.");
    assertThat(run(planner, false, "plan", GOOD, "--format", "json")).isEqualTo(3);
    assertThat(out()).contains("\"status\": \"impossible\"");
    assertThat(run(planner, false, "plan", GOOD, "--format", "csv")).isEqualTo(3);
    assertThat(out()).isEmpty();
    assertThat(err()).contains("Chest holds 3 l.");
  }

  @Test
  void no_plan_in_time_ends_with_four() {
    Planner planner = (world, budget, watch) -> new Answer.NothingFound();
    assertThat(run(planner, false, "plan", GOOD)).isEqualTo(4);
    assertThat(out()).contains("No plan was found in the time given.");
  }

  @Test
  void the_time_is_thirty_seconds_unless_said_otherwise() {
    StringBuilder seen = new StringBuilder();
    Planner planner =
        (world, budget, watch) -> {
          seen.append(budget.time().toMillis()).append(' ').append(budget.effort()).append('\n');
          return new Answer.NothingFound();
        };
    run(planner, false, "plan", GOOD);
    run(planner, false, "plan", GOOD, "--seconds", "1.5", "--effort", "7");
    run(planner, false, "plan", GOOD, "--effort", "7");
    assertThat(seen)
        .hasToString(
            "30000 OptionalInt.empty\n1500 OptionalInt[7]\n1000000000 OptionalInt[7]\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "plan", "plan x y", "plan x --seconds 0", "plan x --seconds many", "plan x --seconds NaN", "plan x --seconds 5d",
        "plan x --effort -1", "plan x --format xml", "plan x --out there", "plan x --colour", "order x",
        "plan x --seconds 1e300"
      })
  void what_is_typed_wrong_is_told_with_the_usage(String line) {
    int exitCode = run(line.isEmpty() ? new String[0] : line.split(" "));
    assertThat(exitCode).isEqualTo(2);
    assertThat(out()).isEmpty();
    assertThat(err()).contains("Usage: ").doesNotContain("Exception").doesNotContain("\tat ");
  }

  @Test
  void a_fault_is_told_without_a_stack_trace() {
    Planner planner =
        (world, budget, watch) -> {
          throw new IllegalStateException("books that do not\nbalance");
        };
    assertThat(run(planner, false, "plan", GOOD)).isEqualTo(1);
    assertThat(out()).isEmpty();
    assertThat(err())
        .startsWith("This is a fault in Frostlot, not in your files.")
        .contains("java.lang.IllegalStateException: books that do not balance")
        .contains("at io.frostlot.cli.CommandsTest.")
        .doesNotContain("\tat ");
  }

  @Test
  void too_little_memory_is_told_with_what_to_do() {
    Planner planner =
        (world, budget, watch) -> {
          throw new OutOfMemoryError("heap");
        };
    assertThat(run(planner, false, "plan", GOOD)).isEqualTo(1);
    assertThat(err()).contains("java -Xmx3g");
  }

  @Test
  void an_earlier_plan_is_compared_with() throws IOException {
    run("plan", GOOD, "--format", "json");
    Path earlier = Files.write(folder.resolve("plan.json"), out.toByteArray());
    assertThat(run("plan", GOOD, "--since", earlier.toString())).isZero();
    assertThat(out()).contains("Nothing: same meals, same orders, same money.").doesNotContain("stale");

    Files.writeString(earlier, Files.readString(earlier).replaceAll("\"digest\": \"....", "\"digest\": \"0123"));
    run("plan", GOOD, "--since", earlier.toString());
    assertThat(out()).contains("The earlier plan is stale");

    Files.writeString(earlier, Files.readString(earlier).replace("\"EUR\"", "\"USD\""));
    assertThat(run("plan", GOOD, "--since", earlier.toString())).isEqualTo(2);
    assertThat(err()).contains("found \"USD\", expected EUR, as in the scenario.");
  }

  @Test
  void help_names_every_option_and_exit_code() {
    assertThat(run("plan", "--help")).isZero();
    assertThat(out())
        .contains("--profiles", "--format", "--seconds", "--effort", "--since", "--out", "--progress")
        .contains("no plan in the time given");
    assertThat(run("--version")).isZero();
    assertThat(out()).startsWith("Frostlot ");
  }
}
