package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;

/**
 * Packs that the keeper has made up his mind to buy, or to buy no more of.
 *
 * <p>least &lt;= sum of count(o, p) over the orders o and rows p that a pledge counts &lt;= most,
 * and boxes(o) &lt;= its boxes.
 */
final class PledgedPacks implements Rule {
  private final World world;

  PledgedPacks(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "pledged-packs";
  }

  @Override
  public String says() {
    return "So many packs are bought, and no more, whatever they are good for.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public void impose(Program program) {
    for (Pledge pledge : world.pledges()) {
      Linear bought = new Linear();
      for (OrderDecisions order : program.decisions().orders().values()) {
        if (pledge.concerns(order.slot()) && pledge.mostBoxes() < Pledge.ANY_BOXES) {
          program.model().atMost(id(), Linear.of(order.boxes()), pledge.mostBoxes());
        }
        order
            .packs()
            .forEach(
                (pack, decision) -> {
                  if (pledge.counts(order.slot(), pack)) {
                    bought.plus(1, decision.count());
                  }
                });
      }
      program.model().atLeast(id(), bought, pledge.packs().least());
      if (pledge.packs().most() < Pack.UNLIMITED) {
        program.model().atMost(id(), bought, pledge.packs().most());
      }
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Pledge pledge : world.pledges()) {
      int kept = pledge.kept(plan);
      Pledge.Packs packs = pledge.packs();
      if (packs.off(kept) > 0) {
        books.breach(id(), "packs from " + pledge.supplier(), kept, packs);
      }
      for (Order order : plan.orders()) {
        if (!pledge.fits(order)) {
          String most = "at most " + pledge.mostBoxes();
          books.breach(id(), "order of " + order.slot().ordered(), order.boxes().count(), most);
        }
      }
    }
  }
}
