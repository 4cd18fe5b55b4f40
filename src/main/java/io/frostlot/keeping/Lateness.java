package io.frostlot.keeping;

/**
 * How late an animal's meals may be over the planning days, all together.
 *
 * @param most of what is counted, 0 or more
 */
public record Lateness(Counted counted, int most) {
  /** What is counted. */
  public enum Counted {
    /** Meals after their best day. */
    MEALS,
    /** The days by which they come after it. */
    DAYS
  }

  public Lateness {
    if (most < 0) {
      throw new IllegalArgumentException("at most " + most + " late " + counted);
    }
  }

  /** What a meal that is so many days late adds. */
  public long of(long daysLate) {
    return counted == Counted.DAYS ? daysLate : Math.min(1, daysLate);
  }
}
