package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.BoxFit;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Pack;

/**
 * An order that is sent fills at least total over limit boxes, rounded up, for each limit of a box,
 * at least one and at most what the supplier sends; where packs stay whole there may be more (see
 * {@link WholePacks}).
 *
 * <p>limit x boxes(o) &gt;= total(o) for kilograms, litres and pieces; boxes(o) &gt;= open(o). A
 * pick-up has none.
 */
final class BoxesByTotal implements Rule {
  private final World world;

  BoxesByTotal(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "boxes";
  }

  @Override
  public String says() {
    return "What is sent goes into as many boxes as it fills.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public void impose(Program program) {
    for (OrderDecisions order : program.decisions().orders().values()) {
      if (order.supplier().isPickUp()) {
        continue;
      }
      Boxing.Limits limits = order.supplier().boxing().limits();
      Linear kilograms = new Linear().plus(-limits.grams().toDouble() / 1000, order.boxes());
      Linear litres = new Linear().plus(-limits.litres().toDouble(), order.boxes());
      Linear pieces = new Linear().plus(-limits.pieces(), order.boxes());
      for (OrderDecisions.PackDecision pack : order.packs().values()) {
        Pack.Packed packed = pack.pack().packed();
        kilograms.plus(packed.grams().toDouble() / 1000, pack.count());
        litres.plus(packed.litres().toDouble(), pack.count());
        pieces.plus(pack.pack().pieces(), pack.count());
      }
      if (!limits.grams().isUnlimited()) {
        program.model().atMost(id(), kilograms, 0);
      }
      if (!limits.litres().isUnlimited()) {
        program.model().atMost(id(), litres, 0);
      }
      if (limits.pieces() != Pack.UNLIMITED) {
        program.model().atMost(id(), pieces, 0);
      }
      program.model().atMost(id(), Linear.of(order.open()).plus(-1, order.boxes()), 0);
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Order order : plan.orders()) {
      Boxing boxing = world.supplier(order.slot().supplier()).boxing();
      if (boxing.way() == Boxing.Way.WHOLE_PACKS) {
        continue;
      }
      int least =
          world.supplier(order.slot().supplier()).isPickUp()
              ? 0
              : Math.max(1, BoxFit.leastByTotals(order.packs(), boxing.limits()));
      int count = order.boxes().count();
      if (count != least || (least > 0 && count > boxing.mostBoxes())) {
        books.breach(
            id(), "order of " + order.slot().ordered(), count + " boxes", least + " boxes");
      }
    }
  }
}
