package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.program.Engine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The README shows what the first command prints, line by line. */
class ReadmeExcerptTest {
  private static final String FENCE = "```";

  @Test
  void the_small_room_is_planned_as_the_readme_shows_it() throws IOException {
    CommandRun run =
        CommandRun.of(
            Engine::solve,
            false,
            "plan",
            "scenarios/small-room",
            "--plan-only",
            "--seconds",
            "120");

    assertThat(run.exitCode()).isZero();
    List<String> shown = excerpt();
    assertThat(shown).hasSizeGreaterThan(30);
    assertThat(run.out().lines().toList()).containsSubsequence(shown);
  }

  private static List<String> excerpt() throws IOException {
    List<String> readme = Files.readAllLines(Path.of("README.md"));
    int from = readme.indexOf(FENCE) + 1;
    int to = from + readme.subList(from, readme.size()).indexOf(FENCE);
    return readme.subList(from, to);
  }
}
