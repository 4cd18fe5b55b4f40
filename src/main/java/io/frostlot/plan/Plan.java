package io.frostlot.plan;

import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An order plan as plain numbers; what follows from it (bill, breaches, leftovers) is derived.
 *
 * @param orders by slot
 * @param lots everything that lies in a freezer at some time, by id
 * @param feedings by day
 * @param discards by day
 */
public record Plan(
    List<Order> orders, List<Lot> lots, List<Feeding> feedings, List<Discard> discards) {
  public static final int DUE_WITHIN_DAYS = 14;

  public Plan {
    orders = orders.stream().sorted().toList();
    lots = List.copyOf(lots);
    feedings = List.copyOf(feedings);
    discards = List.copyOf(discards);
  }

  /** The deliveries that something is ordered for, in their order. */
  public List<Slot> slots() {
    return orders.stream().map(Order::slot).toList();
  }

  /** Orders dated up to {@value #DUE_WITHIN_DAYS} days after a day, by order date. */
  public List<Order> due(LocalDate from) {
    LocalDate last = from.plusDays(DUE_WITHIN_DAYS);
    return byOrderDate().filter(order -> !order.slot().ordered().isAfter(last)).toList();
  }

  /** The same or, where none is due, the first of all; none where nothing is ordered. */
  public List<Order> next(LocalDate from) {
    List<Order> due = due(from);
    return due.isEmpty() ? byOrderDate().limit(1).toList() : due;
  }

  /** Orders by order date, then by supplier. */
  public Stream<Order> byOrderDate() {
    return orders.stream()
        .sorted(
            Comparator.comparing((Order order) -> order.slot().ordered())
                .thenComparing(order -> order.slot().supplier()));
  }

  /** Feedings of meals of count 1, by meal id. */
  public Map<String, Feeding> feedingsByMeal() {
    Map<String, Feeding> byMeal = new HashMap<>(2 * feedings.size());
    feedings.forEach(feeding -> byMeal.put(feeding.mealId(), feeding));
    return byMeal;
  }

  /** All feedings of each meal, by its id. */
  public Map<String, List<Feeding>> feedingsOfMeals() {
    return feedings.stream().collect(Collectors.groupingBy(Feeding::mealId));
  }

  /** Lots by their ids. */
  public Map<String, Lot> lotsById() {
    Map<String, Lot> byId = new HashMap<>(2 * lots.size());
    lots.forEach(lot -> byId.putIfAbsent(lot.id(), lot));
    return byId;
  }

  /** Meals served, by meal id. */
  public Map<String, Integer> served() {
    Map<String, Integer> served = new HashMap<>(2 * feedings.size());
    feedings.forEach(f -> served.merge(f.mealId(), f.meals(), Integer::sum));
    return served;
  }

  /** Packs bought, by delivery and row; each delivery has one order. */
  public Map<Slot, Map<Pack, Integer>> packs() {
    return orders.stream().collect(Collectors.toMap(Order::slot, Order::packs));
  }
}
