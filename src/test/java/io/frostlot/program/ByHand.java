package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A plan of a small world made by hand. What is in hand or under way lies in lots of its own name;
 * what is ordered lies in O1, O2 and so on, in the order in which it is written down; all of it in
 * freezer A.
 */
final class ByHand {
  private static final String FREEZER = "A";
  private final World world;
  private final List<Order> orders = new ArrayList<>();
  private final Map<String, Lot> lots = new LinkedHashMap<>();
  private final List<Feeding> feedings = new ArrayList<>();
  private final List<Discard> discards = new ArrayList<>();
  private int ordered;

  ByHand(World world) {
    this.world = world;
    for (StockLot lot : world.scenario().larder().stock()) {
      put(Lot.of(lot));
    }
    for (PlacedLot lot : world.scenario().larder().placed()) {
      put(
          new Lot(
              lot.id(),
              lot.item(),
              lot.pieces(),
              FREEZER,
              lot.arrivesEarliest(),
              lot.arrivesLatest(),
              useBy(lot.item(), lot.arrivesEarliest()),
              new Lot.UnderWay(lot.id())));
    }
  }

  static Order.Line packs(Pack pack, int packs) {
    return new Order.Line(pack, packs, new TreeMap<>());
  }

  /** Packs of which some are bought under a sale. */
  static Order.Line packs(Pack pack, int packs, Map<String, Integer> underSale) {
    return new Order.Line(pack, packs, new TreeMap<>(underSale));
  }

  /** Boxes without a list of what is in each. */
  static Order.Boxes boxes(int count) {
    return new Order.Boxes(count, List.of());
  }

  World world() {
    return world;
  }

  /** The first delivery that is ordered on a day. */
  Slot slot(int orderDay) {
    return world.slots().stream()
        .filter(slot -> slot.ordered().equals(SmallWorld.day(orderDay)))
        .findFirst()
        .orElseThrow();
  }

  /** Fetched; takes the sales that its lines are bought under. */
  ByHand order(int day, Order.Line... lines) {
    return sent(day, Order.Boxes.NONE, lines);
  }

  ByHand sent(int day, Order.Boxes boxes, Order.Line... lines) {
    Set<String> sales = new TreeSet<>();
    List.of(lines).forEach(line -> sales.addAll(line.underSale().keySet()));
    return order(new Order(slot(day), List.of(lines), sales, boxes));
  }

  /** Fetched, with exactly these promotions. */
  ByHand taking(Set<String> promotions, int day, Order.Line... lines) {
    return order(new Order(slot(day), List.of(lines), promotions, Order.Boxes.NONE));
  }

  ByHand order(Order order) {
    orders.add(order);
    Map<Item, Integer> pieces = new LinkedHashMap<>();
    order.lines().forEach(line -> pieces.merge(line.pack().item(), line.pieces(), Integer::sum));
    pieces.forEach(
        (item, count) ->
            put(
                new Lot(
                    "O" + ++ordered,
                    item,
                    count,
                    FREEZER,
                    order.slot().arrivesEarliest(),
                    order.slot().arrivesLatest(),
                    useBy(item, order.slot().arrivesEarliest()),
                    new Lot.Ordered(order.slot()))));
    return this;
  }

  private LocalDate useBy(Item item, LocalDate arrived) {
    return world.freezer(FREEZER).useBy(item, arrived);
  }

  /** Writes a lot down, in place of one of the same name. */
  ByHand put(Lot lot) {
    lots.put(lot.id(), lot);
    return this;
  }

  Lot lot(String id) {
    return lots.get(id);
  }

  /** All meals of a demand on its best day, one piece each, from one lot. */
  ByHand eat(String meal, String lot) {
    return eat(meal, world.demandsById().get(meal).meal().count(), lot);
  }

  /** Some meals of a demand on its best day, one piece each, from one lot. */
  ByHand eat(String meal, int meals, String lot) {
    LocalDate best = world.demandsById().get(meal).meal().days().best();
    Option one = new Option(lots.get(lot).item(), 1);
    return eat(new Feeding(meal, best, one, meals, List.of(new Feeding.Draw(lot, meals))));
  }

  ByHand eat(Feeding feeding) {
    feedings.add(feeding);
    return this;
  }

  ByHand discard(String lot, int day, int pieces) {
    discards.add(new Discard(lot, SmallWorld.day(day), pieces));
    return this;
  }

  Plan plan() {
    return new Plan(orders, List.copyOf(lots.values()), feedings, discards);
  }
}
