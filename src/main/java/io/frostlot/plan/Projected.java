package io.frostlot.plan;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.forecast.Projection;
import io.frostlot.supply.Item;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;

/** The meals of a scenario with what would do as each: those of the planning, then of the tail. */
final class Projected {
  private static final Comparator<Meal> BY_DAY =
      Comparator.comparing((Meal meal) -> meal.days().best()).thenComparing(Meal::id);

  private final Scenario scenario;
  private final SortedMap<String, Item> items;
  private final Map<Meal.Prey, List<Option>> byPrey = new HashMap<>();

  /** Equal lists as one: there are few beside the meals. */
  private final Map<List<Option>, List<Option>> lists = new HashMap<>();

  private Projected(Scenario scenario, SortedMap<String, Item> items) {
    this.scenario = scenario;
    this.items = items;
  }

  /** In canonical order; costs grow with animals x days x items. */
  static Demands of(Scenario scenario, SortedMap<String, Item> items) {
    return new Projected(scenario, items).demands();
  }

  private Demands demands() {
    List<Demand> demands = new ArrayList<>();
    Stream.concat(
            scenario.collection().needs().stream().map(need -> need.toMeal()),
            meals(scenario.planning()))
        .sorted(BY_DAY)
        .forEach(meal -> demands.add(new Demand(meal, options(meal), false, Money.ZERO)));
    int tailDays = scenario.policy().tail().days();
    if (tailDays > 0) {
      LocalDate first = scenario.planning().to().plusDays(1);
      TailPrice price = new TailPrice(new ListPrices(scenario.suppliers()));
      meals(new Period(first, first.plusDays(tailDays - 1L)))
          .sorted(BY_DAY)
          .forEach(meal -> tailDemand(meal, price).ifPresent(demands::add));
    }
    return Demands.of(demands);
  }

  private Stream<Meal> meals(Period within) {
    return scenario.collection().animals().parallelStream()
        .flatMap(animal -> Projection.meals(animal, within).stream())
        .toList()
        .stream();
  }

  private List<Option> options(Meal meal) {
    return byPrey.computeIfAbsent(
        meal.prey(),
        prey -> {
          List<Option> options = List.copyOf(Projection.options(meal, items.values()));
          return lists.computeIfAbsent(options, list -> list);
        });
  }

  private Optional<Demand> tailDemand(Meal meal, TailPrice price) {
    List<Option> options = options(meal);
    LocalDate best = meal.days().best();
    Meal onItsDay =
        new Meal(
            meal.id(),
            meal.eater(),
            meal.count(),
            new Meal.Days(best, best, best),
            meal.prey(),
            meal.importance());
    return price.of(options).map(p -> new Demand(onItsDay, options, true, p));
  }
}
