package io.frostlot.forecast;

import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.units.Grams;
import java.time.LocalDate;
import java.util.Set;

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

  /** Earliest, best and latest day. */
  public record Days(LocalDate earliest, LocalDate best, LocalDate latest) {
    public Days {
      if (best.isBefore(earliest) || latest.isBefore(best)) {
        throw new IllegalArgumentException(
            "meal days out of order: " + earliest + ", " + best + ", " + latest);
      }
    }

    /** Days after the best day, 0 when on it or before. */
    public long late(LocalDate day) {
      return Math.max(0, day.toEpochDay() - best.toEpochDay());
    }

    public boolean contains(LocalDate day) {
      return !day.isBefore(earliest) && !day.isAfter(latest);
    }
  }

  /**
   * What would do as one meal.
   *
   * @param window grams of the whole meal
   * @param largestPiece no piece of the item may be above
   * @param mostPieces at most so many pieces of one item
   */
  public record Prey(
      Set<String> kinds, MealSize.Window window, Grams largestPiece, int mostPieces) {
    public Prey {
      kinds = Set.copyOf(kinds);
    }
  }
}
