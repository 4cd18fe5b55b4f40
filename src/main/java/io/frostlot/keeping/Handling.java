package io.frostlot.keeping;

import io.frostlot.units.Period;
import java.time.LocalDate;

/**
 * Days on which an animal is handled, and should be left in peace with its last meal before.
 *
 * @param what a show, a move, a visit to the vet, cleaning; shown
 */
public record Handling(Period days, String what) {
  /** A snake is not handled for three days after a meal (Merck Veterinary Manual). */
  public static final int REST_DAYS = 3;

  /** Does a meal on this day come too shortly before? */
  public boolean disturbs(LocalDate meal) {
    return days.overlaps(new Period(meal.plusDays(1), meal.plusDays(REST_DAYS)));
  }
}
