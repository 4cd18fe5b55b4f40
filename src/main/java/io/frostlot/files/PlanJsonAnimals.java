package io.frostlot.files;

import io.frostlot.plan.Fed;
import io.frostlot.plan.MovedMeal;
import io.frostlot.plan.Scenario;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** {@code animals[]} and {@code movedMeals[]} of a plan in JSON. */
final class PlanJsonAnimals {
  private PlanJsonAnimals() {}

  static void write(JsonLines json, List<Fed> animals) {
    write(json, "animals", animals);
  }

  static void write(JsonLines json, String name, List<Fed> animals) {
    json.list(name, animals, PlanJsonAnimals::animal);
  }

  private static void animal(JsonLines json, Fed fed) {
    json.text("name", fed.animal())
        .number("plannedGrams", fed.grams().planned().toDecimal())
        .number("targetGrams", fed.grams().target().toDecimal())
        .number("met", fed.meals().met())
        .number("late", fed.meals().late())
        .number("lateDays", fed.meals().lateDays())
        .number("unmet", fed.meals().unmet());
    if (fed.fourMeals().isEmpty()) {
      json.nothing("leanestFourPercent").nothing("richestFourPercent");
    } else {
      json.number("leanestFourPercent", tenths(fed.leanestFour()))
          .number("richestFourPercent", tenths(fed.richestFour()));
    }
  }

  /** Meals moved clear of handling, and to days on which somebody feeds. */
  static void write(JsonLines json, Scenario scenario) {
    json.list(
        "movedMeals",
        MovedMeal.of(scenario),
        (one, meal) ->
            one.text("animal", meal.animal())
                .day("day", meal.day().intended())
                .day("movedTo", meal.day().days().best())
                .text("place", Typed.of(meal.day().place()))
                .text("cause", Typed.of(meal.reason().cause()))
                .text("what", meal.reason().what()));
  }

  private static BigDecimal tenths(double percent) {
    return BigDecimal.valueOf(percent).setScale(1, RoundingMode.HALF_EVEN);
  }
}
