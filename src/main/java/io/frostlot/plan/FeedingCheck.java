package io.frostlot.plan;

import io.frostlot.forecast.Meal;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;

/** Every feeding is of a meal, on its days, by one of its options, from lots of that prey. */
final class FeedingCheck {
  private final World world;
  private final Plan plan;
  private final Consumer<String> breaches;
  private final Map<String, Demand> demands;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Period days;
  private final Map<String, String> keepers = new HashMap<>();

  FeedingCheck(World world, Plan plan, Consumer<String> breaches) {
    this.world = world;
    this.plan = plan;
    this.breaches = breaches;
    demands = world.demandsById();
    plan.lots().forEach(lot -> lots.put(lot.id(), lot));
    for (Freezer freezer : world.scenario().larder().freezers()) {
      keepers.put(freezer.name(), world.joint().keeperOf(freezer));
    }
    Period planning = world.scenario().planning();
    int tail = world.scenario().policy().tail().days();
    days = new Period(planning.from(), planning.to().plusDays(tail));
  }

  void check() {
    Map<String, Long> served = new HashMap<>();
    for (Feeding feeding : plan.feedings()) {
      checkMeal(feeding, served.merge(feeding.mealId(), (long) feeding.meals(), Long::sum));
      checkDraws(feeding);
    }
    for (Discard discard : plan.discards()) {
      if (discard.pieces() < 1 || !days.contains(discard.day())) {
        breach(
            discard.day(), discard.pieces() + " pieces of lot " + discard.lotId() + " thrown away");
      }
    }
    if (world.scenario().policy().demand() == Policy.Demand.ALL) {
      for (Demand demand : demands.values()) {
        Meal meal = demand.meal();
        if (!demand.tail() && served.getOrDefault(meal.id(), 0L) < meal.count()) {
          breach(meal.days().best(), meal.id() + " is not met, and all meals must be");
        }
      }
    }
  }

  private void checkMeal(Feeding feeding, long served) {
    Demand demand = demands.get(feeding.mealId());
    if (demand == null) {
      breach(feeding.day(), feeding.mealId() + " is no meal");
      return;
    }
    Meal meal = demand.meal();
    if (!meal.days().contains(feeding.day()) || !days.contains(feeding.day())) {
      breach(feeding.day(), meal.id() + " is served outside its days");
    }
    if (!demand.options().contains(feeding.option())) {
      breach(feeding.day(), meal.id() + " is served by what would not do: " + feeding.option());
    }
    if (feeding.meals() < 1 || served > meal.count()) {
      breach(
          feeding.day(),
          meal.id() + " is served " + served + " times, it is " + meal.count() + " meals");
    }
  }

  private void checkDraws(Feeding feeding) {
    long sum = 0;
    for (Feeding.Draw draw : feeding.draws()) {
      sum += draw.pieces();
      Lot lot = lots.get(draw.lotId());
      if (draw.pieces() < 1 || lot == null || !feeding.option().item().equals(lot.item())) {
        breach(feeding.day(), feeding.mealId() + " is served by other prey than planned: " + draw);
      }
    }
    for (Feeding.Draw draw : feeding.draws()) {
      if (!isOwn(feeding, draw)) {
        breach(feeding.day(), feeding.mealId() + " is served from another keeper's lot: " + draw);
      }
    }
    if (sum != feeding.pieces()) {
      breach(
          feeding.day(),
          feeding.mealId() + " takes " + sum + " pieces instead of " + feeding.pieces());
    }
  }

  private boolean isOwn(Feeding feeding, Feeding.Draw draw) {
    Demand demand = demands.get(feeding.mealId());
    Lot lot = lots.get(draw.lotId());
    return demand == null
        || lot == null
        || keepers
            .getOrDefault(lot.freezer(), world.joint().keeperOf(demand))
            .equals(world.joint().keeperOf(demand));
  }

  private void breach(LocalDate day, String what) {
    breaches.accept(day + ": " + what + ".");
  }
}
