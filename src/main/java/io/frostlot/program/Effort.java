package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;

/**
 * The keeper's effort: a reckoned charge per order, and per day on which an order may arrive first.
 *
 * <p>busy(t) &gt;= open(o) for each order o whose earliest arrival is t.
 */
final class Effort implements Rule {
  private final World world;

  Effort(World world) {
    this.world = world;
  }

  private Policy.Charges charges() {
    return world.scenario().policy().charges();
  }

  @Override
  public String id() {
    return "effort";
  }

  @Override
  public String says() {
    return "An order is reckoned at "
        + charges().order()
        + ", a delivery day at "
        + charges().deliveryDay()
        + ".";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  @Override
  public void impose(Program program) {
    Map<LocalDate, Var> busy = new TreeMap<>();
    for (OrderDecisions order : program.decisions().orders().values()) {
      program.charge(this, order.open(), charges().order());
      if (!charges().deliveryDay().isZero()) {
        Var day =
            busy.computeIfAbsent(
                order.slot().arrivesEarliest(),
                d -> {
                  Var created = program.model().real(0, 1);
                  program.charge(this, created, charges().deliveryDay());
                  return created;
                });
        program.model().atMost(id(), Linear.of(order.open()).plus(-1, day), 0);
      }
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    long days =
        plan.orders().stream().map(order -> order.slot().arrivesEarliest()).distinct().count();
    books.reckoned(
        id(),
        charges().order().times(plan.orders().size()).plus(charges().deliveryDay().times(days)));
  }
}
