package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.app.EnginePlanner;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingsTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final Desk desk =
      new Desk(
          new EnginePlanner(), new Terminal(print(out), print(err), false, 80), new Interruption());

  private static PrintStream print(ByteArrayOutputStream to) {
    return new PrintStream(to, true, StandardCharsets.UTF_8);
  }

  private int gather(Format format, List<Object> findings) {
    Findings.Layout<Object> layout =
        new Findings.Layout<>(
            "head|",
            (found, again) -> found + (again ? " again|" : "|"),
            "end",
            found -> "json of " + found,
            found -> "csv of " + found);
    return new Findings<>(desk, format, layout, desk::nothingFound).gather(findings::forEach);
  }

  @Test
  void a_letter_grows_and_says_what_is_told_again() {
    assertThat(gather(Format.TEXT, List.of("a", 1, "b"))).isEqualTo(ExitCode.PLAN);
    assertThat(out).hasToString("head|a|1|b again|end");
  }

  @Test
  void other_formats_are_one_document() {
    assertThat(gather(Format.JSON, List.of("a", 1))).isEqualTo(ExitCode.PLAN);
    assertThat(out).hasToString("json of [a, 1]");
  }

  @Test
  void without_a_plan_in_time_it_ends_with_four() {
    assertThat(gather(Format.TEXT, List.of())).isEqualTo(4);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("No plan was found in the time");
    assertThat(out).as("no head of a letter that never comes").hasToString("");
  }
}
