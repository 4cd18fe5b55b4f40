package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.keeping.Importance;
import io.frostlot.plan.Demand;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What animals that must eat need outside any one freezer, and on which nights that is looked at:
 * once a week, or once in as many days as should be covered where these are fewer, so that every
 * must-meal after the first of these nights is looked at. Asked for are meals that are due by the
 * last of the days that should be covered, may still come, and were not eaten by that night: so one
 * that is eaten late still needs its food, and one that was eaten early needs none.
 */
final class Reserves {
  private static final int WEEK = 7;
  private final World world;
  private final int days;
  private final List<String> keepers;
  private final List<Demand> meals;
  private final List<LocalDate> nights;

  Reserves(World world) {
    this.world = world;
    int asked = world.scenario().policy().safety().secondFreezer().days();
    keepers =
        asked == 0
            ? List.of()
            : world.keepers().stream().filter(keeper -> inUse(keeper).count() > 1).toList();
    days = keepers.isEmpty() ? 0 : asked;
    meals = days == 0 ? List.of() : world.demands().stream().filter(this::isCovered).toList();
    nights = nights(Math.min(days, WEEK));
  }

  /** Is it a meal that must be met, of one with two freezers? */
  private boolean isCovered(Demand demand) {
    return !demand.tail()
        && !demand.options().isEmpty()
        && demand.meal().importance() == Importance.MUST
        && keepers.contains(world.joint().keeperOf(demand));
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
    return nights;
  }

  private List<LocalDate> nights(int step) {
    Period planning = world.scenario().planning();
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

  /** A keeper's must-meals that may still come after a night and are due soon enough then. */
  Stream<Demand> openAfter(LocalDate night, String keeper) {
    return meals.stream()
        .filter(meal -> isDue(night, meal) && world.joint().keeperOf(meal).equals(keeper));
  }

  private boolean isDue(LocalDate night, Demand demand) {
    Meal.Days own = demand.meal().days();
    return own.latest().isAfter(night) && !own.best().isAfter(night.plusDays(days));
  }

  /** Nights after which a meal is asked for where it was not eaten by then; meals differ by it. */
  List<LocalDate> asked(Demand demand) {
    return isCovered(demand)
        ? nights.stream().filter(night -> isDue(night, demand)).toList()
        : List.of();
  }

  /** The fewest pieces with which a meal could be met. */
  static int fewest(Demand demand) {
    return demand.options().stream().mapToInt(Option::pieces).min().orElseThrow();
  }

  /** Ids of the items that would do. */
  static Set<String> items(Demand demand) {
    return demand.options().stream().map(it -> it.item().id()).collect(Collectors.toSet());
  }
}
