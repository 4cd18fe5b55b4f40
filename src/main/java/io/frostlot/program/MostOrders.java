package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;

/**
 * No more orders than asked for.
 *
 * <p>sum of open(o) over all orders o &lt;= most orders of the world.
 */
final class MostOrders implements Rule {
  private final World world;

  MostOrders(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "most-orders";
  }

  @Override
  public String says() {
    return "No more orders than asked for.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public void impose(Program program) {
    if (world.mostOrders() < program.decisions().orders().size()) {
      Linear orders = new Linear();
      program.decisions().orders().values().forEach(order -> orders.plus(1, order.open()));
      program.model().atMost(id(), orders, world.mostOrders());
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    int orders = plan.orders().size();
    if (orders > world.mostOrders()) {
      books.breach(id(), "orders", orders, "at most " + world.mostOrders());
    }
  }
}
