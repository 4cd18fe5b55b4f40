package io.frostlot.plan;

import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Slots;
import io.frostlot.supply.Supplier;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A scenario made ready for planning: meals projected, options and slots listed, all in canonical
 * order.
 *
 * @param meals of the planning, then of the tail, by best day
 * @param slots every possible delivery
 * @param items everything that could be eaten, by id
 * @param joint what several keepers have agreed, or {@link Joint#ALONE}
 * @param pledges packs that are bought whatever they are good for
 * @param mostOrders at most so many orders, or {@link #ANY_NUMBER}
 * @param dueSoon what an earlier plan orders soon, and what it is reckoned to change that
 */
public record World(
    Scenario scenario,
    Demands meals,
    List<Slot> slots,
    SortedMap<String, Item> items,
    Joint joint,
    List<Pledge> pledges,
    int mostOrders,
    DueSoon dueSoon) {
  public static final int ANY_NUMBER = Integer.MAX_VALUE;

  public World {
    if (mostOrders < 0) {
      throw new IllegalArgumentException("at most " + mostOrders + " orders");
    }
    slots = List.copyOf(slots);
    pledges = List.copyOf(pledges);
  }

  /** Nothing is pledged, and there is no earlier plan. */
  public World(
      Scenario scenario,
      List<Demand> demands,
      List<Slot> slots,
      SortedMap<String, Item> items,
      Joint joint) {
    this(scenario, Demands.of(demands), slots, items, joint, List.of(), ANY_NUMBER, DueSoon.NONE);
  }

  /** A world of one keeper. */
  public World(
      Scenario scenario, List<Demand> demands, List<Slot> slots, SortedMap<String, Item> items) {
    this(scenario, demands, slots, items, Joint.ALONE);
  }

  /** Projects the scenario; costs grow with animals x days x items. */
  public static World of(Scenario scenario) {
    SortedMap<String, Item> items = new TreeMap<>();
    Stream.of(
            scenario.suppliers().stream()
                .flatMap(s -> s.sheet().packs().stream())
                .flatMap(Pack::items),
            scenario.larder().stock().stream().map(StockLot::item),
            scenario.larder().placed().stream().map(PlacedLot::item))
        .flatMap(s -> s)
        .forEach(item -> items.put(item.id(), item));
    List<Slot> slots =
        scenario.suppliers().stream()
            .flatMap(s -> Slots.of(s, scenario.planning(), scenario.away()).stream())
            .sorted()
            .toList();
    return new World(
        scenario,
        Projected.of(scenario, items),
        slots,
        items,
        Joint.ALONE,
        List.of(),
        ANY_NUMBER,
        DueSoon.NONE);
  }

  /** The meals and items of another scenario with the same deliveries, pledges and orders. */
  public World projectedAgain(Scenario other) {
    World again = of(other);
    return new World(other, again.meals, slots, again.items, joint, pledges, mostOrders, dueSoon);
  }

  public Supplier supplier(String id) {
    return scenario.suppliers().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  public Freezer freezer(String name) {
    return scenario.larder().freezers().stream()
        .filter(f -> f.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** The two dates of a lot; in hand under an unknown name, its own use-by. */
  public Keeps keeps(Lot lot) {
    Freezer first = freezer(lot.firstFreezer());
    Keeps there =
        lot.origin() instanceof Lot.InHand inHand
            ? scenario.larder().stock().stream()
                .filter(stock -> stock.id().equals(inHand.stockLot()))
                .map(StockLot::keeps)
                .findFirst()
                .orElse(Keeps.until(lot.useBy()))
            : first.keeps(lot.item(), lot.freshFrom());
    return lot.isMoved()
        ? freezer(lot.freezer()).keepsMoved(lot.item(), first, there, lot.move().day())
        : there;
  }

  /** The last day on which a lot is at its best. */
  public LocalDate bestBefore(Lot lot) {
    return keeps(lot).bestBefore();
  }

  /** Every meal, in canonical order. */
  public List<Demand> demands() {
    return meals.all();
  }

  /** Demands by meal id. */
  public Map<String, Demand> demandsById() {
    return meals.byId();
  }

  public int decimals() {
    return Math.max(0, scenario.currency().getDefaultFractionDigits());
  }

  /** Whose freezers there are; one nameless keeper in an ordinary world. */
  public List<String> keepers() {
    return scenario.larder().freezers().stream().map(joint::keeperOf).distinct().toList();
  }

  /** The same world with only some of its slots: a habit, or a part of the search. */
  public World withSlots(List<Slot> some) {
    return new World(scenario, meals, some, items, joint, pledges, mostOrders, dueSoon);
  }

  /** The same world with only some of its meals. */
  public World withDemands(List<Demand> some) {
    return withMeals(Demands.of(some));
  }

  /** The same. */
  public World withMeals(Demands some) {
    return new World(scenario, some, slots, items, joint, pledges, mostOrders, dueSoon);
  }

  /** The same world with these pledges and no others. */
  public World withPledges(List<Pledge> some) {
    return new World(scenario, meals, slots, items, joint, some, mostOrders, dueSoon);
  }

  /** The same world with at most so many orders. */
  public World withMostOrders(int most) {
    return new World(scenario, meals, slots, items, joint, pledges, most, dueSoon);
  }

  /** The same world where these orders are due soon. */
  public World withDueSoon(DueSoon other) {
    return new World(scenario, meals, slots, items, joint, pledges, mostOrders, other);
  }

  /** The same meals, deliveries and items under another scenario. */
  public World withScenario(Scenario other) {
    return new World(other, meals, slots, items, joint, pledges, mostOrders, dueSoon);
  }

  /** The same world with nothing moved between freezers. */
  public World withoutMoves() {
    return withScenario(scenario.withPolicy(scenario.policy().withMoves(MovesPolicy.NONE)));
  }

  /** The same world for one keeper: anybody may eat from any freezer. */
  public World alone() {
    return withJoint(Joint.ALONE);
  }

  /** The same world with other things agreed. */
  public World withJoint(Joint other) {
    return new World(scenario, meals, slots, items, other, pledges, mostOrders, dueSoon);
  }
}
