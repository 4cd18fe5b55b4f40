package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.supply.BoxFit;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Reads a solution as a plan: orders, lots, feedings oldest first, and what must be thrown away.
 */
final class PlanBuilder {
  private final Program program;
  private final double[] point;

  PlanBuilder(Program program, double[] point) {
    this.program = program;
    this.point = point;
  }

  /**
   * The plan.
   *
   * @param throwAway throw away when the solution does, instead of keeping as long as possible
   */
  Plan build(boolean throwAway) {
    Shelves shelves = new Shelves(program, point, throwAway);
    List<Feeding> feedings = new ArrayList<>();
    for (HandingOut.Serving serving : HandingOut.of(program, point)) {
      Option option = serving.choice().option();
      List<Feeding.Draw> draws =
          shelves.take(
              program.decisions().world().joint().keeperOf(serving.demand()),
              serving.choice(),
              serving.meals() * option.pieces());
      feedings.add(
          new Feeding(serving.demand().meal().id(), serving.day(), option, serving.meals(), draws));
    }
    return new Plan(orders(), shelves.lots(), feedings, shelves.discards());
  }

  private List<Order> orders() {
    List<Order> orders = new ArrayList<>();
    for (OrderDecisions order : program.decisions().orders().values()) {
      List<Order.Line> lines = new ArrayList<>();
      order
          .packs(point)
          .forEach((pack, packs) -> lines.add(new Order.Line(pack, packs, underSale(order, pack))));
      if (!lines.isEmpty()) {
        orders.add(
            new Order(order.slot(), lines, taken(order, lines), boxes(order.supplier(), lines)));
      }
    }
    return orders;
  }

  /** The fewest boxes that take the packs of an order. */
  static Order.Boxes boxes(Supplier supplier, List<Order.Line> lines) {
    Boxing boxing = supplier.boxing();
    if (supplier.isPickUp()) {
      return Order.Boxes.NONE;
    }
    Map<Pack, Integer> counts = new HashMap<>();
    lines.forEach(line -> counts.put(line.pack(), line.packs()));
    if (boxing.way() == Boxing.Way.BY_TOTAL) {
      return new Order.Boxes(BoxFit.leastByTotals(counts, boxing.limits()), List.of());
    }
    List<List<Order.Content>> contents =
        BoxFit.pack(counts, boxing.limits()).stream()
            .map(
                box ->
                    box.entrySet().stream()
                        .map(entry -> new Order.Content(entry.getKey(), entry.getValue()))
                        .toList())
            .toList();
    return new Order.Boxes(contents.size(), contents);
  }

  private SortedMap<String, Integer> underSale(OrderDecisions order, Pack pack) {
    SortedMap<String, Integer> counts = new TreeMap<>();
    order
        .underSale(pack)
        .forEach(
            (sale, count) -> {
              int packs = (int) Math.round(count.at(point));
              if (packs > 0) {
                counts.put(sale, packs);
              }
            });
    return counts;
  }

  /** Discounts taken, and sales under which something is bought. */
  private Set<String> taken(OrderDecisions order, List<Order.Line> lines) {
    Set<String> taken = new TreeSet<>();
    lines.forEach(line -> taken.addAll(line.underSale().keySet()));
    order
        .supplier()
        .discountsOn(order.slot())
        .forEach(
            discount -> {
              Var chosen = order.promotions().get(discount.id());
              if (chosen != null && point[chosen.index()] > 0.5) {
                taken.add(discount.id());
              }
            });
    return taken;
  }
}
