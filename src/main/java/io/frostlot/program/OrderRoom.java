package io.frostlot.program;

import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.units.Litres;

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

  /** Does it follow: is there one keeper, whose freezers are checked before the meals? */
  private static boolean follows(World world) {
    return world.keepers().size() == 1
        && world.scenario().policy().freezerCheck() == Policy.FreezerCheck.AFTER_DELIVERY;
  }

  /** Most packs of a row that have room on the day they come; any number where nothing follows. */
  static long most(World world, Slot slot, Pack pack) {
    return follows(world)
        ? room(world, slot).microlitres() / Math.max(1, pack.room().microlitres())
        : Long.MAX_VALUE;
  }

  /**
   * Where it follows, of orders that stand for one delivery each.
   *
   * @param program of the world, or of a relaxation that has its deliveries
   */
  static void add(World world, Program program) {
    boolean takesVisitsTogether = program.decisions().timeline().grain().takesDaysTogether();
    for (OrderDecisions order : program.decisions().orders().values()) {
      if (!follows(world) || (takesVisitsTogether && order.supplier().isPickUp())) {
        continue;
      }
      double room = room(world, order.slot()).toDouble();
      Linear litres = new Linear();
      order
          .packs()
          .forEach((pack, decision) -> litres.plus(pack.room().toDouble(), decision.count()));
      if (program.most(litres) > room) {
        program.model().atMost(ID, litres.plus(-room, order.open()), 0);
      }
    }
  }

  private static Litres room(World world, Slot slot) {
    return world.scenario().larder().freezers().stream()
        .map(it -> it.usableOn(slot.arrivesEarliest()))
        .reduce(Litres.ZERO, Litres::plus);
  }
}
