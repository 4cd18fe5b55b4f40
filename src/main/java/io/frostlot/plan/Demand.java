package io.frostlot.plan;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Optional;

/**
 * A meal of the planning or of the tail and the options that would do.
 *
 * @param tail lies after the planning days: bought at {@code tailPrice} where no leftover serves it
 * @param tailPrice for one meal; zero where not in the tail
 */
public record Demand(Meal meal, List<Option> options, boolean tail, Money tailPrice) {
  public Demand {
    options = List.copyOf(options);
  }

  /** Without so many of its meals, 0 or more; empty where none is left. */
  public Optional<Demand> without(int meals) {
    int left = meal.count() - meals;
    if (meals == 0) {
      return Optional.of(this);
    }
    if (left < 1) {
      return Optional.empty();
    }
    Meal fewer =
        new Meal(meal.id(), meal.eater(), left, meal.days(), meal.prey(), meal.importance());
    return Optional.of(new Demand(fewer, options, tail, tailPrice));
  }
}
