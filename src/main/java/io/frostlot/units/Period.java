package io.frostlot.units;

import java.time.LocalDate;

/**
 * Days from the first to the last, both included.
 *
 * @param from first day
 * @param to last day, not before {@code from}
 */
public record Period(LocalDate from, LocalDate to) {
  public static final Period ALWAYS = new Period(LocalDate.of(1, 1, 1), LocalDate.of(9999, 12, 31));

  public Period {
    if (to.isBefore(from)) {
      throw new IllegalArgumentException("period ends on " + to + " before it starts on " + from);
    }
  }

  public boolean contains(LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(to);
  }

  public boolean overlaps(Period other) {
    return !other.to.isBefore(from) && !other.from.isAfter(to);
  }
}
