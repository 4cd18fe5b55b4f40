package io.frostlot.app;

import java.time.Duration;
import java.util.OptionalInt;

/**
 * How much may be spent on an answer.
 *
 * @param time at most so long by the clock
 * @param effort at most so many rounds of work, the same on every machine; empty: no limit
 */
public record Budget(Duration time, OptionalInt effort) {
  public Budget {
    if (time.isNegative() || time.isZero() || effort.orElse(1) < 1) {
      throw new IllegalArgumentException("budget of " + time + " and " + effort);
    }
  }

  /** An equal part of the time; the same effort. */
  public Budget part(int parts) {
    return new Budget(time.dividedBy(parts), effort);
  }
}
