package io.frostlot.forecast;

import io.frostlot.keeping.Animal;
import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Turns feeding programmes and growth into dated meals, and meals into the options that would do.
 */
public final class Projection {
  private Projection() {}

  /** The meals of an animal whose intended day lies in a period, by that day. */
  public static List<Meal> meals(Animal animal, Period within) {
    Animal.Programme programme = animal.programme();
    Animal.Diet diet = animal.diet();
    List<Meal> meals = new ArrayList<>();
    for (FeedingDay feeding : FeedingDay.of(animal, within)) {
      LocalDate day = feeding.intended();
      meals.add(
          new Meal(
              animal.name() + " " + day,
              animal.name(),
              1,
              feeding.days(),
              new Meal.Prey(
                  diet.kinds(),
                  programme.size().windowFor(animal.massOn(day)),
                  diet.largest().forMass(animal.massOn(day)),
                  diet.mostPieces()),
              programme.importance()));
    }
    return meals;
  }

  /**
   * The options that would do: n pieces whose mean grams lie in the window, no piece above the
   * animal's largest, fewest pieces first within an item.
   */
  public static List<Option> options(Meal meal, Collection<Item> items) {
    Meal.Prey prey = meal.prey();
    List<Option> options = new ArrayList<>();
    for (Item item : items) {
      if (!prey.kinds().contains(item.kind())
          || item.grams().most().compareTo(prey.largestPiece()) > 0) {
        continue;
      }
      for (int pieces = 1; pieces <= prey.mostPieces(); pieces++) {
        Grams grams = item.grams().mean().times(pieces);
        if (grams.compareTo(prey.window().least()) >= 0
            && grams.compareTo(prey.window().most()) <= 0) {
          options.add(new Option(item, pieces));
        }
      }
    }
    return options;
  }
}
