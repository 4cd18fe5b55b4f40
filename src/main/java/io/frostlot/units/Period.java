package io.frostlot.units;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

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

  /** Does a day lie in any of them? */
  public static boolean isAnyOn(List<Period> periods, LocalDate day) {
    for (Period period : periods) {
      if (period.contains(day)) {
        return true;
      }
    }
    return false;
  }

  public boolean overlaps(Period other) {
    return !other.to.isBefore(from) && !other.from.isAfter(to);
  }

  /** From the first day of both to the last. */
  public Period and(Period other) {
    return new Period(
        other.from.isBefore(from) ? other.from : from, other.to.isAfter(to) ? other.to : to);
  }

  /** Every day, in order. */
  public Stream<LocalDate> days() {
    return from.datesUntil(to.plusDays(1));
  }

  /** The allowed day that is nearest to a day, of two as near the earlier; empty where none is. */
  public Optional<LocalDate> nearest(LocalDate day, Predicate<LocalDate> allowed) {
    LocalDate before = day;
    LocalDate after = day;
    while (!before.isBefore(from) || !after.isAfter(to)) {
      if (contains(before) && allowed.test(before)) {
        return Optional.of(before);
      }
      if (contains(after) && allowed.test(after)) {
        return Optional.of(after);
      }
      before = before.minusDays(1);
      after = after.plusDays(1);
    }
    return Optional.empty();
  }
}
