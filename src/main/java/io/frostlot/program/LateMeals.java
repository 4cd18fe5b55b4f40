package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.Map;

/** A meal after its best day is charged, reckoned, per day that it is late. */
final class LateMeals implements Rule {
  private final World world;

  LateMeals(World world) {
    this.world = world;
  }

  private Money perDay() {
    return world.scenario().policy().charges().lateMeal();
  }

  @Override
  public String id() {
    return "late-meals";
  }

  @Override
  public String says() {
    return "A meal after its best day is reckoned at " + perDay() + " a day.";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  @Override
  public void impose(Program program) {
    for (Decisions.Served served : program.decisions().served()) {
      for (int x = 0; x < served.byChoice().size(); x++) {
        long late = served.demandClass().choices().get(x).lateDays();
        program.charge(this, served.byChoice().get(x), perDay().times(late));
      }
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    Map<String, Demand> demands = world.demandsById();
    long days = 0;
    for (Feeding feeding : plan.feedings()) {
      Demand demand = demands.get(feeding.mealId());
      if (demand != null) {
        days += demand.meal().days().late(feeding.day()) * feeding.meals();
      }
    }
    books.reckoned(id(), perDay().times(days));
  }
}
