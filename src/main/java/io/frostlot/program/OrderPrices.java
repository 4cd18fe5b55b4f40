package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Single orders under the promotions with which they cost least, of those that are tried: none,
 * each alone, and all that may be combined; packs go under the first sale that covers them. Judged
 * by the rules that charge an order.
 */
final class OrderPrices {
  private final World world;
  private final List<Rule> rules;

  /** An order and what its invoice comes to. */
  record Priced(Order order, double invoice) {}

  OrderPrices(World world) {
    this.world = world;
    rules = Rules.ofAnOrder(world);
  }

  /** Empty where the packs cannot be ordered together. */
  Optional<Priced> of(Slot slot, Map<Pack, Integer> some) {
    Supplier supplier = world.supplier(slot.supplier());
    if (!some.keySet().stream().allMatch(supplier::canPack)) {
      return Optional.empty();
    }
    SortedMap<Pack, Integer> packs = new TreeMap<>(Comparator.comparing(Pack::id));
    packs.putAll(some);
    Optional<Priced> best = Optional.empty();
    for (Set<String> promotions : promotions(supplier, slot)) {
      Optional<Priced> priced = priced(order(supplier, slot, packs, promotions));
      if (priced.isPresent() && (best.isEmpty() || priced.get().invoice() < best.get().invoice())) {
        best = priced;
      }
    }
    return best;
  }

  private static List<Set<String>> promotions(Supplier supplier, Slot slot) {
    List<Set<String>> sets = new ArrayList<>();
    sets.add(Set.of());
    List<Supplier.Promotion> all = supplier.promotionsOn(slot);
    all.forEach(promotion -> sets.add(Set.of(promotion.id())));
    Set<String> together =
        all.stream()
            .filter(Supplier.Promotion::combinable)
            .map(Supplier.Promotion::id)
            .collect(Collectors.toSet());
    if (together.size() > 1) {
      sets.add(together);
    }
    return sets;
  }

  private static Order order(
      Supplier supplier, Slot slot, SortedMap<Pack, Integer> packs, Set<String> promotions) {
    Map<String, Integer> left = new HashMap<>();
    List<Sale> sales =
        supplier.salesOn(slot).stream().filter(sale -> promotions.contains(sale.id())).toList();
    sales.forEach(
        sale -> left.put(sale.id(), Math.min(sale.limits().perOrder(), sale.limits().inTotal())));
    List<Order.Line> lines = new ArrayList<>();
    packs.forEach((pack, count) -> lines.add(line(pack, count, sales, left)));
    Set<String> taken =
        supplier.discountsOn(slot).stream()
            .map(OrderTerms.Discount::id)
            .filter(promotions::contains)
            .collect(Collectors.toSet());
    lines.forEach(line -> taken.addAll(line.underSale().keySet()));
    return new Order(slot, lines, taken, PlanBuilder.boxes(supplier, lines));
  }

  private static Order.Line line(
      Pack pack, int count, List<Sale> sales, Map<String, Integer> left) {
    SortedMap<String, Integer> under = new TreeMap<>();
    int open = count;
    for (Sale sale : sales) {
      int some = sale.covers(pack) ? Math.min(open, left.get(sale.id())) : 0;
      if (some > 0) {
        under.put(sale.id(), some);
        left.merge(sale.id(), -some, Integer::sum);
        open -= some;
      }
    }
    return new Order.Line(pack, count, under);
  }

  private Optional<Priced> priced(Order order) {
    Plan plan = new Plan(List.of(order), List.of(), List.of(), List.of());
    Books books = new Books();
    rules.forEach(rule -> rule.judge(plan, books));
    return books.breaches().isEmpty()
        ? Optional.of(new Priced(order, books.withoutTail().toDouble()))
        : Optional.empty();
  }
}
