package io.frostlot.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntSupplier;

/**
 * Takes findings as they come: a letter is printed piece by piece, other formats at the end, also
 * where the work is interrupted.
 */
final class Findings<T> {
  private final Desk desk;
  private final Format format;
  private final Layout<T> layout;
  private final IntSupplier nothing;
  private final List<T> found = new ArrayList<>();

  /**
   * How findings are written.
   *
   * @param head of the letter
   * @param piece of the letter, and whether there was one of its kind before
   * @param end of the letter
   */
  record Layout<T>(
      String head,
      BiFunction<T, Boolean, String> piece,
      String end,
      Function<List<T>, String> json,
      Function<List<T>, String> csv) {}

  /**
   * Nothing is found yet.
   *
   * @param nothing says why, where nothing is found; gives the exit code
   */
  Findings(Desk desk, Format format, Layout<T> layout, IntSupplier nothing) {
    this.desk = desk;
    this.format = format;
    this.layout = layout;
    this.nothing = nothing;
  }

  /** Does the work, which tells its findings; returns the exit code. */
  int gather(Consumer<Consumer<T>> work) {
    desk.interruption()
        .guard(
            this::end,
            () -> {
              work.accept(this::take);
              return true;
            });
    return end();
  }

  private synchronized void take(T finding) {
    print(format == Format.TEXT && found.isEmpty() ? layout.head() : "");
    boolean again = found.stream().anyMatch(it -> it.getClass() == finding.getClass());
    found.add(finding);
    print(format == Format.TEXT ? layout.piece().apply(finding, again) : "");
  }

  private synchronized int end() {
    if (found.isEmpty()) {
      return nothing.getAsInt();
    }
    print(
        switch (format) {
          case TEXT -> layout.end();
          case JSON -> layout.json().apply(List.copyOf(found));
          case CSV -> layout.csv().apply(List.copyOf(found));
        });
    return desk.terminal().printed();
  }

  private void print(String text) {
    if (!text.isEmpty()) {
      desk.terminal().clearStatus();
      desk.terminal().out().print(text);
      desk.terminal().out().flush();
    }
  }
}
