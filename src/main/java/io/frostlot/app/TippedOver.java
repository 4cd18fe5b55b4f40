package io.frostlot.app;

import io.frostlot.plan.Order;
import io.frostlot.plan.Shared;
import io.frostlot.plan.World;
import io.frostlot.program.Repricing;
import io.frostlot.supply.Item;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.List;

/** Finds the prey without which a joint order would have had fewer boxes. */
final class TippedOver {
  private TippedOver() {}

  /** By order and item; what is said is what charges, discounts and tax would be less. */
  static List<Shared.Tipped> of(Shared.Part part) {
    List<Shared.Tipped> tipped = new ArrayList<>();
    for (Order order : part.plan().orders()) {
      if (part.isJoint(order) && order.boxes().count() > 1) {
        order.lines().stream()
            .map(line -> line.pack().item())
            .distinct()
            .forEach(item -> look(part, order, item, tipped));
      }
    }
    return tipped;
  }

  private static void look(Shared.Part part, Order order, Item item, List<Shared.Tipped> tipped) {
    List<Order.Line> of = order.lines().stream().filter(line -> isOf(line, item)).toList();
    List<Order.Line> others = order.lines().stream().filter(line -> !isOf(line, item)).toList();
    if (others.isEmpty()) {
      return;
    }
    World world = part.world();
    Repricing.Priced without = Repricing.of(world, order, others);
    int less = order.boxes().count() - without.boxes();
    Money charges = charges(world, order, order.lines()).minus(charges(world, order, others));
    if (less > 0 && !charges.isNegative() && !charges.isZero()) {
      tipped.add(new Shared.Tipped(order, of, less, charges));
    }
  }

  private static Money charges(World world, Order order, List<Order.Line> lines) {
    Repricing.Priced priced = Repricing.of(world, order, lines);
    return priced.total().minus(priced.goods());
  }

  private static boolean isOf(Order.Line line, Item item) {
    return line.pack().item().equals(item);
  }
}
