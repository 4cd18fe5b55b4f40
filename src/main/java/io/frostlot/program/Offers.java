package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Demand;
import io.frostlot.plan.HoldingCharge;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.BoxFit;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What some deliveries could bring for a meal, by what it costs about, with its part of a box. */
final class Offers {
  /**
   * Money for a litre and night, beside what is charged: where room is scarce it should not be
   * taken by what can come later as well.
   */
  private static final double ROOM = 0.02;

  private final World world;
  private final List<Slot> slots;
  private final int[] earliest;
  private final int[] latest;
  private final HoldingCharge holding;
  private final List<Rows> rows = new ArrayList<>();

  /** What a supplier asks at some time. */
  private record Sheet(String supplier, List<Sale> sales) {}

  /**
   * The same, item by item.
   *
   * @param read what that is for a meal with some options, as far as asked for
   */
  private record Rows(Map<Item, Row> byItem, IdentityHashMap<List<Option>, List<Offer>> read) {}

  /** The row of a price sheet that brings an item for the least money. */
  private record Row(Pack pack, double each, int life) {}

  /**
   * A way to serve a meal.
   *
   * @param cost about, without the nights until then
   * @param life days that the pieces keep at most
   */
  record Offer(Option option, Pack pack, double cost, int life) {}

  /** One delivery and the best that it has for a meal. */
  record Choice(int delivery, double cost) {}

  /**
   * Of some deliveries.
   *
   * @param slots in order of arrival
   */
  Offers(World world, List<Slot> slots) {
    this.world = world;
    this.slots = slots;
    earliest = slots.stream().mapToInt(slot -> Timeline.day(slot.arrivesEarliest())).toArray();
    latest = slots.stream().mapToInt(slot -> Timeline.day(slot.arrivesLatest())).toArray();
    holding = world.scenario().policy().charges().holding();
    Map<Sheet, Rows> bySheet = new HashMap<>();
    for (Slot slot : slots) {
      List<Sale> sales = world.supplier(slot.supplier()).salesOn(slot);
      rows.add(bySheet.computeIfAbsent(new Sheet(slot.supplier(), sales), this::rows));
    }
  }

  private Rows rows(Sheet sheet) {
    Supplier supplier = world.supplier(sheet.supplier());
    Map<Item, Row> own = new HashMap<>();
    for (Pack pack : supplier.sheet().packs().stream().filter(supplier::canPack).toList()) {
      int pieces = pack.parts().stream().mapToInt(Pack.Part::pieces).sum();
      double each = (price(pack, sheet.sales()) + ofABox(supplier, pack)) / pieces;
      pack.items()
          .forEach(
              item ->
                  own.merge(
                      item,
                      new Row(pack, each, life(item)),
                      (a, b) -> a.each() <= b.each() ? a : b));
    }
    return new Rows(own, new IdentityHashMap<>());
  }

  /** Of one of many packs, under the sale with which it costs least. */
  private static double price(Pack pack, List<Sale> sales) {
    double regular = pack.price().toDouble();
    return sales.stream()
        .filter(sale -> sale.covers(pack))
        .mapToDouble(sale -> sale.terms().ofMany(regular))
        .reduce(regular, Math::min);
  }

  private int life(Item item) {
    return world.scenario().larder().freezers().stream()
        .filter(Freezer::inUse)
        .mapToInt(freezer -> freezer.lifeDays(item))
        .max()
        .orElse(0);
  }

  /** What a pack's share of a box costs. */
  private static double ofABox(Supplier supplier, Pack pack) {
    if (supplier.isPickUp()) {
      return 0;
    }
    double share = BoxFit.share(pack, supplier.boxing().limits());
    Shipping shipping = supplier.shipping();
    return share * shipping.rate().nextBox().plus(shipping.packing().perBox()).toDouble();
  }

  List<Slot> slots() {
    return slots;
  }

  /** The first day on which a delivery may take room. */
  int earliest(int delivery) {
    return earliest[delivery];
  }

  /** The first day on which it can be eaten. */
  int latest(int delivery) {
    return latest[delivery];
  }

  /** What a delivery has for a meal, the cheapest first. */
  List<Offer> of(int delivery, Demand demand) {
    Rows own = rows.get(delivery);
    return own.read().computeIfAbsent(demand.options(), some -> read(own.byItem(), some));
  }

  private double night(Option option) {
    double litres = option.item().litres().toDouble();
    return option.pieces()
        * (holding.perPiece().toDouble() + litres * (holding.perLitre().toDouble() + ROOM));
  }

  /** What a delivery has that was promised. */
  Offer of(int delivery, Portion portion) {
    return of(delivery, portion.alike().first()).stream()
        .filter(offer -> portion.promised().filter(offer.option()::equals).isPresent())
        .findFirst()
        .orElseThrow();
  }

  private static List<Offer> read(Map<Item, Row> rows, List<Option> options) {
    List<Offer> offers = new ArrayList<>();
    for (Option option : options) {
      Row row = rows.get(option.item());
      if (row != null) {
        offers.add(new Offer(option, row.pack(), row.each() * option.pieces(), row.life()));
      }
    }
    offers.sort(Comparator.comparingDouble(Offer::cost));
    return offers;
  }

  /**
   * The delivery that would serve a meal for the least money, from one on: of those that come as
   * many days before its best day as should be covered, else by its best day, else by its last.
   */
  Optional<Choice> best(Demand demand, int from) {
    int best = Timeline.day(demand.meal().days().best());
    int last = Timeline.day(demand.meal().days().latest());
    int cover = world.scenario().policy().safety().coverDays();
    return best(demand, from, best - cover, best)
        .or(() -> best(demand, from, best, best))
        .or(() -> best(demand, from, last, last));
  }

  /**
   * The same.
   *
   * @param by day by which it must be there
   * @param day of the meal
   */
  private Optional<Choice> best(Demand demand, int from, int by, int day) {
    int chosen = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int j = from; j < latest.length && latest[j] <= by; j++) {
      for (Offer offer : of(j, demand)) {
        double cost = offer.cost() + (day - earliest[j]) * night(offer.option());
        if (earliest[j] + offer.life() > day && cost < least) {
          least = cost;
          chosen = j;
        }
      }
    }
    return chosen < 0 ? Optional.empty() : Optional.of(new Choice(chosen, least));
  }

  /** The day on which the delivery after one can be eaten. */
  int next(int delivery) {
    return delivery + 1 < latest.length ? latest[delivery + 1] : Integer.MAX_VALUE;
  }
}
