package io.frostlot.plan;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.units.Money;
import java.util.List;

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
}
