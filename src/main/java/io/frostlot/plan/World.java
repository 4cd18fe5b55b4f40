package io.frostlot.plan;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.forecast.Projection;
import io.frostlot.keeping.Animal;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Slots;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A scenario made ready for planning: meals projected, options and slots listed, all in canonical
 * order.
 *
 * @param demands planning meals, then tail meals, by best day
 * @param slots every possible delivery
 * @param items everything that could be eaten, by id
 * @param joint what several keepers have agreed, or {@link Joint#ALONE}
 * @param pledges packs that are bought whatever they are good for
 * @param mostOrders at most so many orders, or {@link #ANY_NUMBER}
 * @param dueSoon what an earlier plan orders soon, and what it is reckoned to change that
 */
public record World(
    Scenario scenario,
    List<Demand> demands,
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
    demands = List.copyOf(demands);
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
    this(scenario, demands, slots, items, joint, List.of(), ANY_NUMBER, DueSoon.NONE);
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
    return new World(scenario, demands(scenario, items), slots, items);
  }

  /** The meals and items of another scenario with the same deliveries, pledges and orders. */
  public World projectedAgain(Scenario other) {
    World again = of(other);
    return new World(other, again.demands, slots, again.items, joint, pledges, mostOrders, dueSoon);
  }

  private static List<Demand> demands(Scenario scenario, SortedMap<String, Item> items) {
    List<Demand> demands = new ArrayList<>();
    Stream.concat(
            scenario.collection().needs().stream().map(need -> need.toMeal()),
            mealsOf(scenario, scenario.planning()))
        .sorted(World::byDay)
        .forEach(
            m ->
                demands.add(
                    new Demand(m, Projection.options(m, items.values()), false, Money.ZERO)));
    int tailDays = scenario.policy().tail().days();
    if (tailDays > 0) {
      LocalDate first = scenario.planning().to().plusDays(1);
      TailPrice price = new TailPrice(new ListPrices(scenario.suppliers()));
      mealsOf(scenario, new Period(first, first.plusDays(tailDays - 1L)))
          .sorted(World::byDay)
          .forEach(m -> tailDemand(m, items, price).ifPresent(demands::add));
    }
    return demands;
  }

  private static Optional<Demand> tailDemand(
      Meal meal, SortedMap<String, Item> items, TailPrice price) {
    List<Option> options = Projection.options(meal, items.values());
    Meal onItsDay =
        new Meal(
            meal.id(),
            meal.eater(),
            meal.count(),
            new Meal.Days(meal.days().best(), meal.days().best(), meal.days().best()),
            meal.prey(),
            meal.importance());
    return price.of(options).map(p -> new Demand(onItsDay, options, true, p));
  }

  private static Stream<Meal> mealsOf(Scenario scenario, Period within) {
    return scenario.collection().animals().stream()
        .map((Animal animal) -> Projection.meals(animal, within))
        .flatMap(List::stream);
  }

  private static int byDay(Meal a, Meal b) {
    int byDay = a.days().best().compareTo(b.days().best());
    return byDay != 0 ? byDay : a.id().compareTo(b.id());
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

  /** Demands by meal id. */
  public Map<String, Demand> demandsById() {
    Map<String, Demand> byId = new LinkedHashMap<>();
    demands.forEach(d -> byId.put(d.meal().id(), d));
    return byId;
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
    return new World(scenario, demands, some, items, joint, pledges, mostOrders, dueSoon);
  }

  /** The same world with only some of its meals. */
  public World withDemands(List<Demand> some) {
    return new World(scenario, some, slots, items, joint, pledges, mostOrders, dueSoon);
  }

  /** The same world with these pledges and no others. */
  public World withPledges(List<Pledge> some) {
    return new World(scenario, demands, slots, items, joint, some, mostOrders, dueSoon);
  }

  /** The same world with at most so many orders. */
  public World withMostOrders(int most) {
    return new World(scenario, demands, slots, items, joint, pledges, most, dueSoon);
  }

  /** The same world where these orders are due soon. */
  public World withDueSoon(DueSoon other) {
    return new World(scenario, demands, slots, items, joint, pledges, mostOrders, other);
  }

  /** The same meals, deliveries and items under another scenario. */
  public World withScenario(Scenario other) {
    return new World(other, demands, slots, items, joint, pledges, mostOrders, dueSoon);
  }

  /** The same world with nothing moved between freezers. */
  public World withoutMoves() {
    return withScenario(scenario.withPolicy(scenario.policy().withMoves(MovesPolicy.NONE)));
  }

  /** The same world for one keeper: anybody may eat from any freezer. */
  public World alone() {
    return new World(scenario, demands, slots, items, Joint.ALONE, pledges, mostOrders, dueSoon);
  }
}
