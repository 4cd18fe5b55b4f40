package io.frostlot.plan;

import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

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
  public Plan {
    orders = orders.stream().sorted().toList();
    lots = List.copyOf(lots);
    feedings = List.copyOf(feedings);
    discards = List.copyOf(discards);
  }

  /** Feedings of meals of count 1, by meal id. */
  public Map<String, Feeding> feedingsByMeal() {
    Map<String, Feeding> byMeal = new HashMap<>();
    feedings.forEach(feeding -> byMeal.put(feeding.mealId(), feeding));
    return byMeal;
  }

  /** Meals served, by meal id. */
  public Map<String, Integer> served() {
    Map<String, Integer> served = new HashMap<>();
    feedings.forEach(f -> served.merge(f.mealId(), f.meals(), Integer::sum));
    return served;
  }

  /** Packs bought, by delivery and row; each delivery has one order. */
  public Map<Slot, Map<Pack, Integer>> packs() {
    return orders.stream().collect(Collectors.toMap(Order::slot, Order::packs));
  }
}
