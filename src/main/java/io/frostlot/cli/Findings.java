package io.frostlot.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Takes findings as they come: a letter is printed piece by piece, other formats at the end, also
 * where the work is interrupted.
 */
final class Findings<T> {
  private final Terminal terminal;
  private final Format format;
  private final Layout<T> layout;
  private final List<T> found = new ArrayList<>();

  /**
   * How findings are written.
   *
   * @param head of the letter
   * @param piece of the letter
   * @param end of the letter
   */
  record Layout<T>(
      String head,
      Function<T, String> piece,
      String end,
      Function<List<T>, String> json,
      Function<List<T>, String> csv) {}

  Findings(Terminal terminal, Format format, Layout<T> layout) {
    this.terminal = terminal;
    this.format = format;
    this.layout = layout;
  }

  /** Does the work, which tells its findings; returns the exit code. */
  int gather(Interruption interruption, Consumer<Consumer<T>> work) {
    print(format == Format.TEXT ? layout.head() : "");
    interruption.guard(
        this::end,
        () -> {
          work.accept(this::take);
          return true;
        });
    return end();
  }

  private synchronized void take(T finding) {
    found.add(finding);
    print(format == Format.TEXT ? layout.piece().apply(finding) : "");
  }

  private synchronized int end() {
    if (found.isEmpty()) {
      terminal.clearStatus();
      terminal.err().println("No plan was found in the time given; more time (--seconds) may do.");
      return ExitCode.NOTHING_IN_TIME;
    }
    print(
        switch (format) {
          case TEXT -> layout.end();
          case JSON -> layout.json().apply(List.copyOf(found));
          case CSV -> layout.csv().apply(List.copyOf(found));
        });
    return terminal.out().checkError() ? ExitCode.FAULT : ExitCode.PLAN;
  }

  private void print(String text) {
    if (!text.isEmpty()) {
      terminal.clearStatus();
      terminal.out().print(text);
      terminal.out().flush();
    }
  }
}
