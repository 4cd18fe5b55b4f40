package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;

/**
 * Packs that can be had, per delivery and in total.
 *
 * <p>count(o, p) &lt;= per delivery (a bound of the variable too); sum over orders dated within the
 * window of count(o, p) &lt;= in total.
 */
final class Availability implements Rule {
  private final World world;

  Availability(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "availability";
  }

  @Override
  public String says() {
    return "No more packs than the supplier has, per delivery and in total.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public void impose(Program program) {
    for (Supplier supplier : world.scenario().suppliers()) {
      for (Pack pack : supplier.sheet().packs()) {
        Linear total = new Linear();
        for (OrderDecisions order : program.decisions().orders().values()) {
          OrderDecisions.PackDecision decision = order.packs().get(pack);
          if (decision == null || !order.slot().supplier().equals(supplier.id())) {
            continue;
          }
          if (pack.available().perDelivery() < program.model().column(decision.count()).most()) {
            program
                .model()
                .atMost(id(), Linear.of(decision.count()), pack.available().perDelivery());
          }
          if (pack.available().window().contains(order.slot().ordered())) {
            total.plus(1, decision.count());
          }
        }
        if (pack.available().inTotal() < program.most(total)) {
          program.model().atMost(id(), total, pack.available().inTotal());
        }
      }
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Supplier supplier : world.scenario().suppliers()) {
      for (Pack pack : supplier.sheet().packs()) {
        long total = 0;
        for (Order order : plan.orders()) {
          for (Order.Line line : order.lines()) {
            if (!order.slot().supplier().equals(supplier.id()) || !line.pack().equals(pack)) {
              continue;
            }
            if (line.packs() > pack.available().perDelivery()) {
              books.breach(
                  id(),
                  pack.id() + " ordered on " + order.slot().ordered(),
                  line.packs(),
                  "at most " + pack.available().perDelivery());
            }
            total += pack.available().window().contains(order.slot().ordered()) ? line.packs() : 0;
          }
        }
        if (total > pack.available().inTotal()) {
          books.breach(id(), pack.id() + " in all", total, "at most " + pack.available().inTotal());
        }
      }
    }
  }
}
