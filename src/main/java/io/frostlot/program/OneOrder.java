package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * Packs are bought whole, in an order that is placed; at most one order per supplier and order
 * date.
 *
 * <p>count(o, p) &lt;= most(o, p) open(o); open(o) &lt;= sum of count(o, p); sum of open over the
 * orders of one supplier and order date &lt;= 1.
 */
final class OneOrder implements Rule {
  private final World world;

  OneOrder(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "one-order";
  }

  @Override
  public String says() {
    return "Whole packs, and at most one order per supplier and order date.";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  private record SupplierDay(String supplier, LocalDate ordered) {}

  @Override
  public void impose(Program program) {
    Map<SupplierDay, Linear> perDay = new LinkedHashMap<>();
    for (OrderDecisions order : program.decisions().orders().values()) {
      Linear packs = new Linear();
      for (OrderDecisions.PackDecision pack : order.packs().values()) {
        double most = program.model().column(pack.count()).most();
        program.model().atMost(id(), Linear.of(pack.count()).plus(-most, order.open()), 0);
        packs.plus(1, pack.count());
      }
      program.model().atLeast(id(), packs.plus(-1, order.open()), 0);
      perDay
          .computeIfAbsent(
              new SupplierDay(order.slot().supplier(), order.slot().ordered()), k -> new Linear())
          .plus(1, order.open());
    }
    perDay.values().stream()
        .filter(orders -> orders.terms().variables().length > 1)
        .forEach(orders -> program.model().atMost(id(), orders, 1));
  }

  @Override
  public void judge(Plan plan, Books books) {
    Set<SupplierDay> seen = new HashSet<>();
    for (Order order : plan.orders()) {
      String where = order.slot().supplier() + " on " + order.slot().ordered();
      if (!seen.add(new SupplierDay(order.slot().supplier(), order.slot().ordered()))) {
        books.breach(id(), where, "a second order", "one order");
      }
      if (!world.slots().contains(order.slot())) {
        books.breach(id(), where, order.slot(), "a possible delivery");
      }
      if (order.lines().isEmpty()) {
        books.breach(id(), where, "an empty order", "a pack");
      }
      Set<Pack> sold = new HashSet<>(world.supplier(order.slot().supplier()).sheet().packs());
      for (Order.Line line : order.lines()) {
        if (!sold.remove(line.pack())) {
          books.breach(id(), where, line.pack().id(), "a row of the price sheet, once");
        }
      }
    }
  }
}
