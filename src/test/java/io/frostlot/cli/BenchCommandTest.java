package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.program.Engine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The bench as a user runs it: its shape, and that its methods do not contradict each other. */
@Timeout(600)
class BenchCommandTest {
  private static final String PUBLISHED = "src/test/resources/io/frostlot/published/";
  @TempDir Path out;

  private record Line(List<String> cells) {
    String method() {
      return cells.get(2);
    }

    String standing() {
      return String.join(",", cells.subList(9, 12));
    }

    String cost() {
      return cells.get(12);
    }

    String bound() {
      return cells.get(13);
    }
  }

  private List<Line> lines() throws IOException {
    return Files.readAllLines(out.resolve("bench.csv")).stream()
        .skip(2)
        .map(line -> new Line(Arrays.asList(line.split(",", -1))))
        .toList();
  }

  private static void assertNotContradicted(Line a, Line b) {
    if (!a.bound().isEmpty() && !b.cost().isEmpty() && a.standing().equals(b.standing())) {
      assertThat(Double.parseDouble(a.bound()))
          .isLessThanOrEqualTo(Double.parseDouble(b.cost()) + 0.011);
    }
  }

  /**
   * H. M. Wagner, T. M. Whitin, "Dynamic Version of the Economic Lot Size Model", Management
   * Science 5(1), 1958, 89-96: optimum 864; and a drawn room.
   */
  @Test
  void quick_measures_both_methods_and_neither_bound_is_above_the_cost_of_the_other()
      throws IOException {
    CommandRun run =
        CommandRun.of(
            Engine::solve,
            false,
            "bench",
            "--quick",
            "--size",
            "XS",
            "--folder",
            PUBLISHED + "wagner-whitin-1958",
            "--out",
            out.toString());

    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(run.err())
        .contains("wagner-whitin-1958 frostlot: first plan ", "; cost 864.00, bound 8")
        .doesNotContain("[", "Optional");
    assertThat(run.out()).doesNotContain("none s");
    List<Line> lines = lines();
    assertThat(lines).hasSize(4).allMatch(line -> line.cells().size() == 19);
    assertThat(lines)
        .extracting(Line::method)
        .containsExactly("frostlot", "plain", "frostlot", "plain");
    for (int i = 0; i < lines.size(); i += 2) {
      assertNotContradicted(lines.get(i), lines.get(i + 1));
      assertNotContradicted(lines.get(i + 1), lines.get(i));
    }
    assertThat(lines.subList(0, 2))
        .filteredOn(line -> !line.cells().get(8).isEmpty())
        .extracting(Line::cost)
        .allMatch(cost -> cost.equals("864.00"));
    assertThat(run.out())
        .contains(
            "| size | method | rooms | limit | first plan | 1 % | 0.5 % | half a box charge |")
        .contains("times as fast to 0.5 %");
    assertThat(Files.readString(out.resolve("bench.md"))).contains("| XS | plain | 1 | 3 |");
  }

  @Test
  void a_folder_that_cannot_be_read_is_refused() {
    CommandRun run = CommandRun.of("bench", "--folder", "no/such/folder");

    assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.err()).contains("no/such/folder");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void a_size_that_is_none_is_refused() {
    CommandRun run = CommandRun.of("bench", "--size", "HUGE");

    assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.err()).contains("HUGE");
  }

  /** What is known of the joint plan does not contradict itself. */
  @Test
  void quick_measures_a_group_and_all_its_subgroups() throws IOException {
    CommandRun run =
        CommandRun.of(
            Engine::solve,
            false,
            "bench",
            "--quick",
            "--group",
            "2",
            "--ways-seconds",
            "2",
            "--out",
            out.toString());

    assertThat(run.exitCode()).as(run.err()).isZero();
    List<String> lines = Files.readAllLines(out.resolve("groups.csv"));
    List<String> names = List.of(lines.get(1).split(",", -1));
    List<String> cells = List.of(lines.get(2).split(",", -1));
    assertThat(lines).hasSize(3);
    assertThat(lines.get(0)).startsWith("# Frostlot").contains("OR-Tools", "processors");
    assertThat(cells).hasSameSizeAs(names);
    assertThat(cells.subList(0, 5)).containsExactly("2", "XS", "1", "at once", "10");
    assertThat(cells.get(names.indexOf("subgroups"))).isEqualTo("3");
    String cost = cells.get(names.indexOf("cost"));
    String bound = cells.get(names.indexOf("bound"));
    if (!cost.isEmpty() && !bound.isEmpty()) {
      assertThat(Double.parseDouble(bound)).isLessThanOrEqualTo(Double.parseDouble(cost) + 0.011);
    }
    assertThat(run.out()).contains("| members | size | seed | hand-overs |", "| 2 | XS | 1 |");
    assertThat(Files.readString(out.resolve("groups.md"))).isEqualTo(run.out());
  }

  @Test
  void options_of_groups_that_do_not_go_together_are_refused() {
    CommandRun alone = CommandRun.of("bench", "--group", "1");
    CommandRun folder = CommandRun.of("bench", "--group", "3", "--folder", "any");
    CommandRun ways = CommandRun.of("bench", "--ways-seconds", "5");

    assertThat(List.of(alone, folder, ways))
        .extracting(CommandRun::exitCode)
        .containsOnly(ExitCode.INPUT_PROBLEMS);
    assertThat(alone.err()).contains("--group: found 1, expected 2 to 8");
    assertThat(folder.err()).contains("--group: expected without --folder");
    assertThat(ways.err()).contains("--ways-seconds: expected only with --group");
  }
}
