package io.frostlot.cli;

import io.frostlot.app.Planner;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** What a command printed and ended with. */
record CommandRun(int exitCode, String out, String err) {
  static final String GOOD = "src/test/resources/io/frostlot/files/good";

  /** With a planner that orders one pack. */
  static CommandRun of(String... arguments) {
    return of(new OnePackPlanner(), false, arguments);
  }

  /**
   * Runs a command in this process.
   *
   * @param watched as if standard error were a terminal
   */
  static CommandRun of(Planner planner, boolean watched, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new PrintStream(out, false, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            watched,
            80);
    int exitCode = Commands.run(planner, terminal, new Interruption(), arguments);
    terminal.out().flush();
    return new CommandRun(
        exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
