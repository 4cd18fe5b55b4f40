package io.frostlot.program;

import java.time.Duration;
import java.util.OptionalInt;

/**
 * When to stop looking.
 *
 * @param time by the clock, over all levels; above 0
 * @param rounds of work on each level, the same on every machine, at least 1; empty: no limit
 */
public record Limits(Duration time, OptionalInt rounds) {
  public Limits {
    if (time.isNegative() || time.isZero() || rounds.orElse(1) < 1) {
      throw new IllegalArgumentException("limits of " + time + " and " + rounds + " rounds");
    }
  }

  public static Limits ofSeconds(long seconds) {
    return new Limits(Duration.ofSeconds(seconds), OptionalInt.empty());
  }

  /** An equal part of the time; the same rounds. */
  public Limits part(int parts) {
    return new Limits(time.dividedBy(parts), rounds);
  }

  public long millis() {
    return time.toMillis();
  }
}
