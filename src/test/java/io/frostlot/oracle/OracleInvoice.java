package io.frostlot.oracle;

import io.frostlot.plan.Order;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The least that the packs of one order can cost: every set of promotions that may be taken
 * together is tried, and every way of buying packs under its sales.
 */
final class OracleInvoice {
  private final Supplier supplier;
  private final Slot slot;
  private final int decimals;
  private final List<Promotions> choices = new ArrayList<>();

  /** Promotions taken together. */
  private record Promotions(List<Sale> sales, List<OrderTerms.Discount> discounts) {
    Set<String> ids() {
      Set<String> ids = new TreeSet<>();
      sales.forEach(sale -> ids.add(sale.id()));
      discounts.forEach(discount -> ids.add(discount.id()));
      return ids;
    }

    boolean mayBeCombined() {
      return sales.size() + discounts.size() <= 1
          || (sales.stream().allMatch(Sale::combinable)
              && discounts.stream().allMatch(OrderTerms.Discount::combinable));
    }
  }

  /** An order and what it costs, in millionths. */
  record Priced(Order order, long cost) {
    /** Packs of the order under a sale. */
    int underSale(String sale) {
      return order.lines().stream().mapToInt(l -> l.underSale().getOrDefault(sale, 0)).sum();
    }
  }

  OracleInvoice(Supplier supplier, Slot slot, int decimals) {
    this.supplier = supplier;
    this.slot = slot;
    this.decimals = decimals;
    List<Sale> sales =
        supplier.sheet().sales().stream()
            .filter(sale -> sale.when().contains(slot.date(sale.follows())))
            .toList();
    List<OrderTerms.Discount> discounts =
        supplier.terms().discounts().stream()
            .filter(discount -> discount.when().contains(slot.date(discount.follows())))
            .toList();
    for (int set = 0; set < 1 << (sales.size() + discounts.size()); set++) {
      Promotions promotions =
          new Promotions(chosen(sales, set), chosen(discounts, set >> sales.size()));
      if (promotions.mayBeCombined()) {
        choices.add(promotions);
      }
    }
    choices.sort(Comparator.comparingInt(p -> p.sales.size() + p.discounts.size()));
  }

  private static <T> List<T> chosen(List<T> all, int set) {
    List<T> chosen = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if ((set >> i & 1) == 1) {
        chosen.add(all.get(i));
      }
    }
    return chosen;
  }

  /**
   * The cheapest orders of some packs, one for each number of packs under sales that are limited
   * over all orders; none where the supplier does not take the order.
   */
  Collection<Priced> price(Map<Pack, Integer> packs) {
    Optional<Order.Boxes> boxes = boxes(packs);
    if (boxes.isEmpty()) {
      return List.of();
    }
    Map<List<Integer>, Priced> cheapest = new LinkedHashMap<>();
    for (Promotions promotions : choices) {
      new Filling(packs, promotions, boxes.get(), cheapest).fill();
    }
    return cheapest.values();
  }

  private Optional<Order.Boxes> boxes(Map<Pack, Integer> packs) {
    if (supplier.isPickUp()) {
      return Optional.of(Order.Boxes.NONE);
    }
    List<Pack> all = new ArrayList<>();
    packs.forEach(
        (pack, count) -> {
          for (int i = 0; i < count; i++) {
            all.add(pack);
          }
        });
    return new OracleBoxes(supplier.boxing()).pack(all);
  }

  /** Puts lines together for one set of promotions. */
  private final class Filling {
    private final List<Pack> rows;
    private final Map<Pack, Integer> packs;
    private final List<Set<OracleLine.Way>> ways = new ArrayList<>();
    private final Promotions promotions;
    private final Order.Boxes boxes;
    private final Map<List<Integer>, Priced> cheapest;

    Filling(
        Map<Pack, Integer> packs,
        Promotions promotions,
        Order.Boxes boxes,
        Map<List<Integer>, Priced> cheapest) {
      rows = List.copyOf(packs.keySet());
      this.packs = packs;
      this.promotions = promotions;
      this.boxes = boxes;
      this.cheapest = cheapest;
      for (Pack row : rows) {
        ways.add(new OracleLine(supplier, row, packs.get(row), promotions.sales, decimals).ways());
      }
    }

    void fill() {
      fill(new ArrayList<>());
    }

    private void fill(List<OracleLine.Way> chosen) {
      if (chosen.size() < rows.size()) {
        for (OracleLine.Way way : ways.get(chosen.size())) {
          chosen.add(way);
          fill(chosen);
          chosen.remove(chosen.size() - 1);
        }
        return;
      }
      List<Integer> limited = new ArrayList<>();
      for (int s = 0; s < promotions.sales.size(); s++) {
        int sale = s;
        Sale.Limits limits = promotions.sales.get(s).limits();
        int under = chosen.stream().mapToInt(way -> way.underSale().get(sale)).sum();
        if (under == 0 || under > limits.perOrder() || under > limits.inTotal()) {
          return;
        }
        limited.add(limits.inTotal() == Pack.UNLIMITED ? 0 : under);
      }
      List<Integer> key = keyOf(limited);
      Priced before = cheapest.get(key);
      total(chosen)
          .ifPresent(
              cost -> {
                if (before == null || cost < before.cost) {
                  cheapest.put(key, new Priced(order(chosen), cost));
                }
              });
    }

    /** Packs under each of the supplier's sales that is limited over all orders. */
    private List<Integer> keyOf(List<Integer> limited) {
      return supplier.sheet().sales().stream()
          .map(sale -> promotions.sales.indexOf(sale))
          .map(index -> index < 0 ? 0 : limited.get(index))
          .toList();
    }

    private OptionalLong total(List<OracleLine.Way> chosen) {
      long goods = chosen.stream().mapToLong(OracleLine.Way::goods).sum();
      long regular = chosen.stream().mapToLong(OracleLine.Way::regular).sum();
      return new OracleTotal(supplier, slot, decimals)
          .of(new OracleTotal.Goods(goods, regular), promotions.discounts, boxes.count());
    }

    private Order order(List<OracleLine.Way> chosen) {
      List<Order.Line> lines = new ArrayList<>();
      for (int r = 0; r < rows.size(); r++) {
        TreeMap<String, Integer> under = new TreeMap<>();
        for (int s = 0; s < promotions.sales.size(); s++) {
          int packsUnder = chosen.get(r).underSale().get(s);
          if (packsUnder > 0) {
            under.put(promotions.sales.get(s).id(), packsUnder);
          }
        }
        lines.add(new Order.Line(rows.get(r), packs.get(rows.get(r)), under));
      }
      return new Order(slot, lines, promotions.ids(), boxes);
    }
  }
}
