package io.frostlot.forecast;

import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.units.Grams;
import io.frostlot.units.Period;
import io.frostlot.units.SizeBand;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Identical meals of one eater on the same days; an animal's meal has count 1.
 *
 * @param id unique: eater and best day
 * @param eater animal name, or the label of a row of needs
 * @param count at least 1
 * @param prey what would do
 * @param importance what may happen to it
 */
public record Meal(
    String id, String eater, int count, Days days, Prey prey, Importance importance) {
  public Meal {
    if (count < 1) {
      throw new IllegalArgumentException("meal " + id + " with count " + count);
    }
  }

  /**
   * Days on which a meal may come.
   *
   * @param closed days from the earliest to the latest on which it may not; neither of them, nor
   *     the best
   */
  public record Days(LocalDate earliest, LocalDate best, LocalDate latest, Set<LocalDate> closed) {
    public Days {
      closed = Set.copyOf(closed);
      if (best.isBefore(earliest) || latest.isBefore(best)) {
        throw new IllegalArgumentException(
            "meal days out of order: " + earliest + ", " + best + ", " + latest);
      }
      if (closed.contains(earliest) || closed.contains(best) || closed.contains(latest)) {
        throw new IllegalArgumentException("a meal on a closed day: " + closed);
      }
    }

    /** All days from the earliest to the latest. */
    public Days(LocalDate earliest, LocalDate best, LocalDate latest) {
      this(earliest, best, latest, Set.of());
    }

    /**
     * The open days of a period.
     *
     * @param best one of them
     */
    public static Days of(LocalDate best, Period within, Predicate<LocalDate> open) {
      LocalDate earliest = best;
      LocalDate latest = best;
      List<LocalDate> shut = new ArrayList<>();
      for (LocalDate day = within.from(); !day.isAfter(within.to()); day = day.plusDays(1)) {
        if (!open.test(day)) {
          shut.add(day);
        } else {
          earliest = day.isBefore(earliest) ? day : earliest;
          latest = day;
        }
      }
      Period days = new Period(earliest, latest);
      shut.removeIf(day -> !days.contains(day));
      return new Days(earliest, best, latest, Set.copyOf(shut));
    }

    /** Those of a period in which the best day lies. */
    Days within(Period period) {
      return period.contains(earliest) && period.contains(latest)
          ? this
          : of(best, new Period(earliest, latest), day -> contains(day) && period.contains(day));
    }

    /** The first of them in a period; empty where none is. */
    public Optional<LocalDate> first(Period within) {
      return nearest(within.from(), within);
    }

    /** The one in a period that is nearest to the best day; empty where none is. */
    public Optional<LocalDate> nearestToBest(Period within) {
      return nearest(best, within);
    }

    private Optional<LocalDate> nearest(LocalDate to, Period within) {
      if (latest.isBefore(within.from()) || earliest.isAfter(within.to())) {
        return Optional.empty();
      }
      LocalDate from = within.from().isBefore(earliest) ? earliest : within.from();
      LocalDate end = within.to().isAfter(latest) ? latest : within.to();
      LocalDate start = to.isBefore(from) ? from : to.isAfter(end) ? end : to;
      return closed.isEmpty()
          ? Optional.of(start)
          : new Period(from, end).nearest(start, day -> !closed.contains(day));
    }

    /** Days after the best day, 0 when on it or before. */
    public long late(LocalDate day) {
      return Math.max(0, day.toEpochDay() - best.toEpochDay());
    }

    public boolean contains(LocalDate day) {
      return !day.isBefore(earliest) && !day.isAfter(latest) && !closed.contains(day);
    }
  }

  /**
   * What would do as one meal.
   *
   * @param window grams of the whole meal
   * @param largestPiece no piece of the item may be above
   * @param mostPieces at most so many pieces of one item
   * @param kept nothing else than this size, at most one, where it would do
   */
  public record Prey(
      Set<String> kinds,
      MealSize.Window window,
      Grams largestPiece,
      int mostPieces,
      Set<SizeBand> kept) {
    public Prey {
      kinds = Set.copyOf(kinds);
      kept = Set.copyOf(kept);
    }

    /** Of any size that would do. */
    public Prey(Set<String> kinds, MealSize.Window window, Grams largestPiece, int mostPieces) {
      this(kinds, window, largestPiece, mostPieces, Set.of());
    }
  }
}
