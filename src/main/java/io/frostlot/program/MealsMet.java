package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.keeping.Importance;
import io.frostlot.plan.Books;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeSet;

/**
 * Every meal is served by one of its options within its days, and those that are planned or of the
 * tail, or counted as unmet.
 *
 * <p>For each class c: sum over choices of served(c, x) + missed(c) = count(c). Missed must-meals
 * are the first level of the comparison, other missed meals of the planning the second; under "all"
 * none may be missed. A meal of the tail that no leftover serves is bought (see {@link Tail}).
 */
final class MealsMet implements Rule {
  private final World world;

  MealsMet(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "meals-met";
  }

  @Override
  public String says() {
    long meals =
        world.demands().stream().filter(d -> !d.tail()).mapToInt(d -> d.meal().count()).sum();
    return "Each of the " + meals + " planned meals is met by prey of the right kind and weight.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  private boolean all() {
    return world.scenario().policy().demand() == Policy.Demand.ALL;
  }

  @Override
  public void impose(Program program) {
    for (Decisions.Served served : program.decisions().served()) {
      Linear meals = Linear.of(served.missed());
      served.byChoice().forEach(choice -> meals.plus(1, choice));
      DemandClass c = served.demandClass();
      program.model().instance(sentence(c));
      program.model().equal(id(), meals, c.count());
      if (!c.tail() && all()) {
        program.model().atMost(id(), Linear.of(served.missed()), 0);
      } else if (!c.tail()) {
        program
            .model()
            .minimise(c.must() ? Level.UNMET_MUST : Level.UNMET_OTHER, Linear.of(served.missed()));
      }
    }
  }

  private static String sentence(DemandClass c) {
    Meal meal = c.first().meal();
    int members = c.alike().stream().mapToInt(alike -> alike.members().size()).sum();
    String more = members > 1 ? " and " + (members - 1) + " like it" : "";
    return meal.eater()
        + " on "
        + meal.days().best()
        + more
        + ": "
        + meal.prey().window().least()
        + " to "
        + meal.prey().window().most()
        + " of "
        + String.join(" or ", new TreeSet<>(meal.prey().kinds()))
        + ", "
        + c.count()
        + (c.count() == 1 ? " meal." : " meals.");
  }

  @Override
  public void judge(Plan plan, Books books) {
    Map<String, Demand> demands = world.demandsById();
    LocalDate last = Timeline.date(Timeline.lastDay(world));
    Period days = new Period(world.scenario().planning().from(), last);
    for (Feeding feeding : plan.feedings()) {
      Demand demand = demands.get(feeding.mealId());
      if (demand == null
          || feeding.meals() < 1
          || !demand.options().contains(feeding.option())
          || !demand.meal().days().contains(feeding.day())
          || !days.contains(feeding.day())) {
        books.breach(id(), feeding.mealId(), feeding, "an option of a planned meal, on its days");
      }
    }
    Map<String, Integer> served = plan.served();
    for (Demand demand : demands.values()) {
      Meal meal = demand.meal();
      int missed = meal.count() - served.getOrDefault(meal.id(), 0);
      if (missed < 0 || (missed > 0 && all() && !demand.tail())) {
        books.breach(id(), meal.id(), meal.count() - missed + " meals", meal.count());
      }
      if (missed > 0 && !demand.tail()) {
        books.unmet(missed, meal.importance() == Importance.MUST);
      }
    }
  }
}
