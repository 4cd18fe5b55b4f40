package io.frostlot.plan;

import io.frostlot.forecast.Meal;
import io.frostlot.supply.Item;
import java.time.LocalDate;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether animals that take an item have later meals for which its pieces are too light. */
final class Outgrowing {
  private Outgrowing() {}

  /** Is it so once no meal of the world takes it any more? */
  static boolean is(World world, Item item) {
    Set<Meal> taking =
        world.demands().stream()
            .filter(demand -> takes(demand, item))
            .map(Demand::meal)
            .collect(Collectors.toSet());
    LocalDate last =
        taking.stream()
            .map(meal -> meal.days().best())
            .max(LocalDate::compareTo)
            .orElse(LocalDate.MAX);
    Set<String> eaters = taking.stream().map(Meal::eater).collect(Collectors.toSet());
    return world.demands().stream()
        .map(Demand::meal)
        .filter(meal -> meal.days().best().isAfter(last) && eaters.contains(meal.eater()))
        .anyMatch(meal -> isTooLight(item, meal.prey()));
  }

  static boolean takes(Demand demand, Item item) {
    return demand.options().stream().anyMatch(option -> option.item().equals(item));
  }

  private static boolean isTooLight(Item item, Meal.Prey prey) {
    return prey.kinds().contains(item.kind())
        && item.grams().mean().compareTo(prey.window().least()) < 0;
  }
}
