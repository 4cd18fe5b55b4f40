package io.frostlot.oracle;

import io.frostlot.plan.Order;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;

/**
 * What ties the orders of a plan together: packs under a sale and packs to be had over all orders,
 * one order per supplier and order date.
 */
final class TotalLimits {
  private final List<Limit> limits = new ArrayList<>();

  private record Limit(int most, ToIntFunction<Order> use) {}

  private record OrderDay(String supplier, LocalDate day) {}

  TotalLimits(World world) {
    for (Supplier supplier : world.scenario().suppliers()) {
      for (Sale sale : supplier.sheet().sales()) {
        if (sale.limits().inTotal() < Pack.UNLIMITED) {
          limits.add(new Limit(sale.limits().inTotal(), order -> underSale(order, supplier, sale)));
        }
      }
      for (Pack pack : supplier.sheet().packs()) {
        if (pack.available().inTotal() < Pack.UNLIMITED) {
          limits.add(new Limit(pack.available().inTotal(), order -> packs(order, supplier, pack)));
        }
      }
    }
    Map<OrderDay, Integer> slots = new HashMap<>();
    for (Slot slot : world.slots()) {
      if (slots.merge(new OrderDay(slot.supplier(), slot.ordered()), 1, Integer::sum) == 2) {
        limits.add(new Limit(1, order -> sameOrderDay(order, slot) ? 1 : 0));
      }
    }
  }

  private static int underSale(Order order, Supplier supplier, Sale sale) {
    return order.slot().supplier().equals(supplier.id())
        ? order.lines().stream().mapToInt(l -> l.underSale().getOrDefault(sale.id(), 0)).sum()
        : 0;
  }

  private static int packs(Order order, Supplier supplier, Pack pack) {
    return order.slot().supplier().equals(supplier.id())
            && pack.available().window().contains(order.slot().ordered())
        ? order.lines().stream()
            .filter(line -> line.pack().equals(pack))
            .mapToInt(Order.Line::packs)
            .sum()
        : 0;
  }

  private static boolean sameOrderDay(Order order, Slot slot) {
    return order.slot().supplier().equals(slot.supplier())
        && order.slot().ordered().equals(slot.ordered());
  }

  int size() {
    return limits.size();
  }

  int most(int limit) {
    return limits.get(limit).most;
  }

  int[] uses(Order order) {
    return limits.stream().mapToInt(limit -> limit.use.applyAsInt(order)).toArray();
  }
}
