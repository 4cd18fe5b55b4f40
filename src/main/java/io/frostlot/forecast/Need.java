package io.frostlot.forecast;

import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.units.Grams;
import java.util.Set;

/**
 * A dated need typed by the keeper: so many pieces of a kind, each within a window; must-meals of
 * one piece.
 *
 * @param label unique
 * @param pieces at least 1
 */
public record Need(String label, String kind, Grams least, Grams most, int pieces, Meal.Days days) {

  /** The same need under another label. */
  public Need labelled(String other) {
    return new Need(other, kind, least, most, pieces, days);
  }

  public Meal toMeal() {
    Grams middle = new Grams((least.milligrams() + most.milligrams()) / 2);
    return new Meal(
        label,
        label,
        pieces,
        days,
        new Meal.Prey(Set.of(kind), new MealSize.Window(least, middle, most), most, 1),
        Importance.MUST);
  }
}
