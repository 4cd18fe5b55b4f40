package io.frostlot.cli;

import java.util.Locale;

/** The time since a work began, as it stands before a line of progress. */
final class Clock {
  private final long start = System.nanoTime();

  /** Such as " 4.2 s". */
  String time() {
    return String.format(Locale.ROOT, "%5.1f s", (System.nanoTime() - start) / 1e9);
  }
}
