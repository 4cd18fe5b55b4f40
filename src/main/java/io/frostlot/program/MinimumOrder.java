package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.OrderTerms;
import io.frostlot.units.Money;

/**
 * An order below the supplier's minimum is not taken: value(o) on its base &gt;= minimum x open(o).
 */
final class MinimumOrder implements Rule {
  private final World world;

  MinimumOrder(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "minimum-order";
  }

  @Override
  public String says() {
    return "No order below the supplier's minimum.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public void impose(Program program) {
    for (OrderDecisions order : program.decisions().orders().values()) {
      OrderTerms.Threshold minimum = order.supplier().terms().minimum();
      if (!minimum.from().isZero()) {
        Linear surplus = order.sums().value(minimum.base());
        program.model().atLeast(id(), surplus.plus(-minimum.from().toDouble(), order.open()), 0);
      }
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Order order : plan.orders()) {
      OrderTerms.Threshold minimum = world.supplier(order.slot().supplier()).terms().minimum();
      Money value = books.ledger(order.slot()).value(minimum.base());
      if (!value.atLeast(minimum.from())) {
        books.breach(
            id(), "order of " + order.slot().ordered(), value, "at least " + minimum.from());
      }
    }
  }
}
