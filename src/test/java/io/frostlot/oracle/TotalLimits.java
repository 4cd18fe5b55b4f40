package io.frostlot.oracle;

import io.frostlot.plan.Order;
import io.frostlot.plan.Pledge;
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
 * one order per supplier and order date, no more orders than asked for, packs that are pledged.
 */
final class TotalLimits {
  private final List<Limit> limits = new ArrayList<>();

  /** Packs or orders; of what is pledged no more is counted than is asked for. */
  private record Limit(int least, int most, ToIntFunction<Order> use) {
    static Limit most(int most, ToIntFunction<Order> use) {
      return new Limit(0, most, use);
    }

    int counted(int used) {
      return least > 0 ? Math.min(used, least) : used;
    }
  }

  private record OrderDay(String supplier, LocalDate day) {}

  TotalLimits(World world) {
    for (Supplier supplier : world.scenario().suppliers()) {
      for (Sale sale : supplier.sheet().sales()) {
        if (sale.limits().inTotal() < Pack.UNLIMITED) {
          limits.add(
              Limit.most(sale.limits().inTotal(), order -> underSale(order, supplier, sale)));
        }
      }
      for (Pack pack : supplier.sheet().packs()) {
        if (pack.available().inTotal() < Pack.UNLIMITED) {
          limits.add(Limit.most(pack.available().inTotal(), order -> packs(order, supplier, pack)));
        }
      }
    }
    Map<OrderDay, Integer> slots = new HashMap<>();
    for (Slot slot : world.slots()) {
      if (slots.merge(new OrderDay(slot.supplier(), slot.ordered()), 1, Integer::sum) == 2) {
        limits.add(Limit.most(1, order -> sameOrderDay(order, slot) ? 1 : 0));
      }
    }
    if (world.mostOrders() < World.ANY_NUMBER) {
      limits.add(Limit.most(world.mostOrders(), order -> 1));
    }
    for (Pledge pledge : world.pledges()) {
      Pledge.Packs packs = pledge.packs();
      limits.add(new Limit(packs.least(), packs.most(), order -> pledged(order, pledge)));
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

  private static int pledged(Order order, Pledge pledge) {
    boolean counts =
        order.slot().supplier().equals(pledge.supplier())
            && pledge.orderDates().contains(order.slot().ordered());
    return counts
        ? order.lines().stream()
            .filter(line -> pledge.packIds().contains(line.pack().id()))
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

  /** Used up so far, as far as it matters. */
  int counted(int limit, int used) {
    return limits.get(limit).counted(used);
  }

  /**
   * When everything is over, what was pledged has been bought.
   *
   * @param first of the limits in the counts of a state
   */
  Stage end(int first) {
    return (state, trail, next) -> {
      State cleared = state;
      for (int limit = 0; limit < limits.size(); limit++) {
        if (state.counts()[first + limit] < limits.get(limit).least) {
          return;
        }
        cleared = cleared.withCount(first + limit, 0);
      }
      next.add(cleared, Score.ZERO, trail);
    };
  }

  int[] uses(Order order) {
    return limits.stream().mapToInt(limit -> limit.use.applyAsInt(order)).toArray();
  }
}
