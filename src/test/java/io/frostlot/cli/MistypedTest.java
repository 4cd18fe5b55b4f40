package io.frostlot.cli;

import static io.frostlot.cli.CommandRun.GOOD;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.app.Planner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes wrong, on either side, is told in words. */
class MistypedTest {
  @TempDir Path folder;

  private Path spoilt(String file, String what, String by) throws IOException {
    Path copy = folder.resolve("spoilt");
    try (Stream<Path> files = Files.walk(Path.of(GOOD))) {
      for (Path path : files.filter(Files::isRegularFile).toList()) {
        Path target = copy.resolve(Path.of(GOOD).relativize(path).toString());
        Files.createDirectories(target.getParent());
        Files.copy(path, target);
      }
    }
    Path spoilt = copy.resolve(file);
    Files.writeString(spoilt, Files.readString(spoilt).replace(what, by));
    return copy;
  }

  @Test
  void problems_are_told_together_and_nothing_is_printed() throws IOException {
    String spoilt = spoilt("freezers.csv", "12.5", "a lot").toString();
    CommandRun run = CommandRun.of("plan", spoilt, "--since", folder.resolve("no.json").toString());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("freezers.csv line 2, column usable_litres: found \"a lot\"")
        .contains("no.json: found no such file")
        .endsWith("2 problems; nothing was planned.\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "plan",
        "plan x y",
        "plan x --seconds 0",
        "plan x --seconds many",
        "plan x --seconds NaN",
        "plan x --seconds 5d",
        "plan x --seconds 1e300",
        "plan x --effort -1",
        "plan x --effort 1.5",
        "sale x --effort -1",
        "freezer x --effort -1",
        "compare x --effort -1",
        "explain x --effort -1",
        "explain x --effort 1.5",
        "explain x --effort 1 --seconds 0",
        "plan x --format xml",
        "plan x --out there",
        "freezer x --fails-on soon",
        "freezer x --more-litres 1e999999999",
        "sale x --skipped few",
        "bench --seed x",
        "bench --size HUGE",
        "plan x --colour",
        "order x"
      })
  void what_is_typed_wrong_is_told_with_where_to_look_it_up(String line) {
    CommandRun run = CommandRun.of(line.isEmpty() ? new String[0] : line.split(" "));
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .containsAnyOf("All options: frostlot ", "Usage: frostlot ", "Did you mean: ")
        .doesNotContain("Exception")
        .doesNotContain("\tat ");
  }

  /** One wrong value is no reason to print all options. */
  @Test
  void a_wrong_value_is_told_in_two_lines() {
    assertThat(CommandRun.of("plan", "x", "--seconds", "5d").err())
        .isEqualToNormalizingNewlines(
            """
            Invalid value for option '--seconds': found "5d", expected a number
            All options: frostlot plan --help
            """);
    assertThat(CommandRun.of("plan", "x", "--second", "5").err())
        .contains("Possible solutions: --seconds");
    assertThat(CommandRun.of().err()).contains("Usage: frostlot", "Commands:", "ledger");
  }

  @Test
  void a_fault_is_told_without_a_stack_trace() {
    Planner planner =
        (world, limits, watch) -> {
          throw new IllegalStateException("books that do not\nbalance");
        };
    CommandRun run = CommandRun.of(planner, false, "plan", GOOD);
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("This is a fault in Frostlot, not in your files.")
        .contains("java.lang.IllegalStateException: books that do not balance")
        .contains("at io.frostlot.cli.MistypedTest.")
        .doesNotContain("\tat ");
  }

  @Test
  void too_little_memory_is_told_with_what_to_do() {
    Planner planner =
        (world, limits, watch) -> {
          throw new OutOfMemoryError("heap");
        };
    CommandRun run = CommandRun.of(planner, false, "plan", GOOD);
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.err()).contains("java -Xmx3g");
  }

  @Test
  void what_cannot_be_planned_with_is_no_fault() {
    Planner planner =
        (world, limits, watch) -> {
          throw new UnsupportedOperationException("moves between freezers");
        };
    CommandRun run = CommandRun.of(planner, false, "plan", GOOD);
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo(
            "This cannot be planned with yet: moves between freezers" + System.lineSeparator());
  }
}
