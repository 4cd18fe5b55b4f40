package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.Map;

/**
 * Meals after the planning days are served by what is left over, or bought at the tail price; a
 * leftover is worth what it really replaces and never more.
 *
 * <p>Charge: sum over tail classes c of tail price(c) x missed(c), to four decimals.
 */
final class Tail implements Rule {
  private final World world;

  Tail(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "tail";
  }

  @Override
  public String says() {
    return "The "
        + world.scenario().policy().tail().days()
        + " days after the planning are fed from what is left over, or at the least regular price.";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  @Override
  public void impose(Program program) {
    for (Decisions.Served served : program.decisions().served()) {
      if (served.demandClass().tail()) {
        program.charge(this, served.missed(), served.demandClass().tailPrice());
      }
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    Map<String, Integer> served = plan.served();
    Money sum = Money.ZERO;
    for (Demand demand : world.demands()) {
      if (demand.tail()) {
        int bought = demand.meal().count() - served.getOrDefault(demand.meal().id(), 0);
        sum = sum.plus(demand.tailPrice().times(bought));
      }
    }
    books.tail(id(), sum);
  }
}
