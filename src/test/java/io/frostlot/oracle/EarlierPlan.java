package io.frostlot.oracle;

import io.frostlot.plan.DueSoon;
import io.frostlot.plan.Order;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.Map;
import java.util.TreeMap;

/** What it is reckoned, in millionths, to order soon otherwise than an earlier plan did. */
final class EarlierPlan {
  private final World world;
  private final long charge;
  private final Map<Slot, Map<String, Integer>> before = new TreeMap<>();

  EarlierPlan(World world) {
    this.world = world;
    charge = Amounts.of(world.dueSoon().charge());
    for (DueSoon.Due due : world.dueSoon().orders()) {
      before.put(due.slot(), due.packs());
    }
  }

  /** Of the orders that no delivery can be had for. */
  long lost() {
    return charge * before.keySet().stream().filter(slot -> !world.slots().contains(slot)).count();
  }

  /** Of ordering nothing by a delivery. */
  long nothing(Slot slot) {
    return before.containsKey(slot) ? charge : 0;
  }

  /** Of an order. */
  long of(Order order) {
    if (!before.containsKey(order.slot())) {
      return world.dueSoon().dates().contains(order.slot().ordered()) ? charge : 0;
    }
    Map<String, Integer> left = new TreeMap<>(before.get(order.slot()));
    boolean same = true;
    for (Order.Line line : order.lines()) {
      Integer asked = left.remove(line.pack().id());
      same &= asked != null && asked == line.packs();
    }
    return same && left.isEmpty() ? 0 : charge;
  }

  /** Did it order some of a row by a delivery? */
  boolean had(Slot slot, Pack pack) {
    return before.getOrDefault(slot, Map.of()).containsKey(pack.id());
  }
}
