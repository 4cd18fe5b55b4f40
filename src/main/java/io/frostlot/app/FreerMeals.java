package io.frostlot.app;

import io.frostlot.forecast.Meal;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.units.Period;
import java.util.List;

/**
 * Which of two worlds of the same deliveries and freezers allows all meals that the other does: on
 * more days about the same best day, with more kinds or sizes of prey. More prey is taken for more
 * freedom only where nothing is asked that depends on what a meal could be: adequacy, margins, what
 * is on the plate.
 */
final class FreerMeals {
  private FreerMeals() {}

  static Wish.Freer of(World with, World without) {
    if (allows(without, with)) {
      return Wish.Freer.WITHOUT;
    }
    return allows(with, without) ? Wish.Freer.WITH : Wish.Freer.NEITHER;
  }

  private static boolean allows(World more, World less) {
    List<Demand> all = more.demands();
    if (all.size() != less.demands().size() || asksForSecondFreezer(more)) {
      return false;
    }
    boolean anyPrey = asksNothing(more.scenario()) && asksNothing(less.scenario());
    for (int i = 0; i < all.size(); i++) {
      if (!allows(all.get(i), less.demands().get(i), anyPrey)) {
        return false;
      }
    }
    return true;
  }

  private static boolean allows(Demand more, Demand less, boolean anyPrey) {
    Meal one = more.meal();
    Meal other = less.meal();
    return one.id().equals(other.id())
        && one.count() == other.count()
        && one.importance() == other.importance()
        && one.prey().window().target().equals(other.prey().window().target())
        && more.tailPrice().compareTo(less.tailPrice()) <= 0
        && (anyPrey
            ? more.options().containsAll(less.options())
            : more.options().equals(less.options()))
        && allows(one.days(), other.days());
  }

  private static boolean allows(Meal.Days more, Meal.Days less) {
    return more.best().equals(less.best())
        && new Period(less.earliest(), less.latest())
            .days()
            .allMatch(day -> !less.contains(day) || more.contains(day));
  }

  private static boolean asksForSecondFreezer(World world) {
    return world.scenario().policy().safety().secondFreezer().days() > 0;
  }

  private static boolean asksNothing(Scenario scenario) {
    return !scenario.policy().adequacy().asked()
        && scenario.policy().safety().equals(Policy.Safety.NONE)
        && scenario.collection().animals().stream()
            .allMatch(animal -> animal.diet().plate().equals(Plate.ANY));
  }
}
