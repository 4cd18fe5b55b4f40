package io.frostlot.files;

import io.frostlot.plan.Fed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** {@code animals[]} of a plan in JSON. */
final class PlanJsonAnimals {
  private PlanJsonAnimals() {}

  static void write(JsonLines json, List<Fed> animals) {
    json.list("animals", animals, PlanJsonAnimals::animal);
  }

  private static void animal(JsonLines json, Fed fed) {
    json.text("name", fed.animal())
        .number("plannedGrams", fed.grams().planned().toDecimal())
        .number("targetGrams", fed.grams().target().toDecimal())
        .number("met", fed.meals().met())
        .number("late", fed.meals().late())
        .number("unmet", fed.meals().unmet());
    if (fed.fourMeals().isEmpty()) {
      json.nothing("leanestFourPercent").nothing("richestFourPercent");
    } else {
      json.number("leanestFourPercent", tenths(fed.leanestFour()))
          .number("richestFourPercent", tenths(fed.richestFour()));
    }
  }

  private static BigDecimal tenths(double percent) {
    return BigDecimal.valueOf(percent).setScale(1, RoundingMode.HALF_EVEN);
  }
}
