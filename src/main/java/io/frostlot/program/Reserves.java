package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.keeping.Importance;
import io.frostlot.plan.Demand;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What animals that must eat need outside any one freezer, and on which nights that is looked at:
 * once a week, or once in as many days as should be covered where these are fewer, so that every
 * must-meal after the first of these nights is looked at.
 */
final class Reserves {
  private static final int WEEK = 7;
  private final World world;
  private final int days;
  private final List<String> keepers;
  private final List<Demand> meals;

  Reserves(World world) {
    this.world = world;
    int asked = world.scenario().policy().safety().secondFreezer().days();
    keepers =
        asked == 0
            ? List.of()
            : world.keepers().stream().filter(keeper -> inUse(keeper).count() > 1).toList();
    days = keepers.isEmpty() ? 0 : asked;
    meals =
        days == 0
            ? List.of()
            : world.demands().stream()
                .filter(demand -> !demand.tail() && !demand.options().isEmpty())
                .filter(demand -> demand.meal().importance() == Importance.MUST)
                .filter(demand -> keepers.contains(world.joint().keeperOf(demand)))
                .toList();
  }

  /** Days that should be covered; none where nobody has two freezers in use. */
  int days() {
    return days;
  }

  /** Those with two freezers in use, or more. */
  List<String> keepers() {
    return keepers;
  }

  /** Freezers of a keeper, any of which may fail. */
  Stream<Freezer> inUse(String keeper) {
    return world.scenario().larder().freezers().stream()
        .filter(f -> f.inUse() && world.joint().keeperOf(f).equals(keeper));
  }

  List<LocalDate> nights() {
    Period planning = world.scenario().planning();
    int step = Math.min(days, WEEK);
    return step == 0
        ? List.of()
        : planning
            .from()
            .datesUntil(planning.to())
            .filter(night -> (night.toEpochDay() - planning.from().toEpochDay() + 1) % step == 0)
            .toList();
  }

  /** Would a piece of an item do for any of the meals? */
  boolean concern(Item item) {
    return meals.stream().anyMatch(meal -> items(meal).contains(item.id()));
  }

  /**
   * Pieces that a keeper's must-meals of the days after a night need, by the items that would do.
   *
   * @return by ids of items; a meal counts as the fewest pieces with which it could be met
   */
  Map<Set<String>, Integer> after(LocalDate night, String keeper) {
    Map<Set<String>, Integer> needs = new HashMap<>();
    for (Demand meal : meals) {
      LocalDate best = meal.meal().days().best();
      if (best.isAfter(night)
          && !best.isAfter(night.plusDays(days))
          && world.joint().keeperOf(meal).equals(keeper)) {
        int fewest = meal.options().stream().mapToInt(Option::pieces).min().orElseThrow();
        needs.merge(items(meal), fewest * meal.meal().count(), Integer::sum);
      }
    }
    return needs;
  }

  private static Set<String> items(Demand demand) {
    return demand.options().stream().map(it -> it.item().id()).collect(Collectors.toSet());
  }
}
