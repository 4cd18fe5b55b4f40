package io.frostlot.program;

import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;

/**
 * A strengthening: what comes by a delivery lies in freezers on the day it comes, all of it, so it
 * is no more than they hold. Follows from every-piece and freezer-space where freezers are checked
 * before the meals, and cuts off no plan: for each order o, with litres(p) those of a pack's pieces
 * and room(t) what all freezers hold on the day t on which it may come first, sum over p of
 * litres(p) x count(o, p) &lt;= room(t) x open(o).
 *
 * <p>Without it a relaxation opens a small part of an order and puts far more into it than could
 * ever come at once, as if it reached thresholds of the order value, or steps of a price break, on
 * the way. Where all that an order could bring fits, nothing is said.
 */
final class OrderRoom {
  private static final String ID = "order-room";

  private OrderRoom() {}

  /**
   * Where it follows: one keeper, days not taken together, freezers checked before the meals.
   *
   * @param program of the world, or of a relaxation that has its deliveries
   */
  static void add(World world, Program program) {
    boolean follows =
        world.keepers().size() == 1
            && !program.decisions().timeline().grain().takesDaysTogether()
            && world.scenario().policy().freezerCheck() == Policy.FreezerCheck.AFTER_DELIVERY;
    if (!follows) {
      return;
    }
    for (OrderDecisions order : program.decisions().orders().values()) {
      double room =
          world.scenario().larder().freezers().stream()
              .mapToDouble(it -> it.usableOn(order.slot().arrivesEarliest()).toDouble())
              .sum();
      Linear litres = new Linear();
      order.packs().forEach((pack, decision) -> litres.plus(litres(pack), decision.count()));
      if (program.most(litres) > room) {
        program.model().atMost(ID, litres.plus(-room, order.open()), 0);
      }
    }
  }

  private static double litres(Pack pack) {
    return pack.parts().stream()
        .mapToDouble(part -> part.item().litres().times(part.pieces()).toDouble())
        .sum();
  }
}
