package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Deliveries that may be ordered in a world and the packs of each, by number. */
final class Deliveries {
  /** Orders whose cost is kept. */
  private static final int MOST_KEPT = 50_000;

  private final World world;
  private final OrderPrices prices;
  private final List<Delivery> all = new ArrayList<>();
  private final Map<Slot, Integer> numbers = new HashMap<>();
  private final List<Map<IntBuffer, Double>> costs = new ArrayList<>();
  private int kept;

  /**
   * A delivery that may be ordered.
   *
   * @param packs that could be of use
   * @param rows bags in which they may come
   * @param packOf the number of each bag's pack
   * @param items wares of each bag, by number
   * @param most packs of each
   * @param usableFrom day, counted from the first
   */
  record Delivery(
      Slot slot,
      List<Pack> packs,
      List<Bag> rows,
      int[] packOf,
      List<BitSet> items,
      int[] most,
      int usableFrom) {
    boolean isOfSupplier(Delivery other) {
      return slot.supplier().equals(other.slot.supplier());
    }
  }

  /**
   * Of a world.
   *
   * @param bags in which packs may come
   */
  Deliveries(World world, LookDays look, Bags bags) {
    this.world = world;
    prices = new OrderPrices(world);
    UsefulPacks useful = new UsefulPacks(world);
    for (Slot slot : world.slots()) {
      Supplier supplier = world.supplier(slot.supplier());
      Map<Pack, Integer> mostOf = new LinkedHashMap<>();
      supplier.sheet().packs().forEach(it -> mostOf.put(it, useful.most(slot, supplier, it)));
      mostOf.values().removeIf(most -> most == 0);
      List<Pack> packs = List.copyOf(mostOf.keySet());
      List<Bag> rows = bags.of(slot, packs);
      int[] packOf = rows.stream().mapToInt(bag -> packs.indexOf(bag.pack())).toArray();
      int[] most = rows.stream().mapToInt(bag -> mostOf.get(bag.pack())).toArray();
      List<BitSet> items = rows.stream().map(Bag::wares).toList();
      numbers.put(slot, all.size());
      costs.add(new HashMap<>());
      int usable = look.day(slot.arrivesLatest());
      all.add(new Delivery(slot, packs, rows, packOf, items, most, usable));
    }
  }

  List<Delivery> all() {
    return all;
  }

  Delivery get(int delivery) {
    return all.get(delivery);
  }

  /** The number of a delivery; empty where it is none of these. */
  OptionalInt number(Slot slot) {
    return Optional.ofNullable(numbers.get(slot)).map(OptionalInt::of).orElse(OptionalInt.empty());
  }

  /**
   * An order and what it costs; empty where it cannot be.
   *
   * @param bags of each row, some of them not 0
   */
  Optional<OrderPrices.Priced> order(int delivery, int[] bags) {
    return ofPacks(delivery, packs(delivery, bags));
  }

  private Optional<OrderPrices.Priced> ofPacks(int delivery, int[] packs) {
    Map<Pack, Integer> some = new HashMap<>();
    for (int p = 0; p < packs.length; p++) {
      if (packs[p] > 0) {
        some.put(all.get(delivery).packs().get(p), packs[p]);
      }
    }
    return prices
        .of(all.get(delivery).slot(), some)
        .filter(priced -> world.pledges().stream().allMatch(it -> it.fits(priced.order())));
  }

  /** What is pledged of them, with nothing bought. */
  PledgeCounts pledged() {
    return new PledgeCounts(world.pledges(), this);
  }

  /** Money, with the effort for the order but not its day; infinite where it cannot be. */
  double cost(int delivery, int[] bags) {
    int[] packs = packs(delivery, bags);
    Map<IntBuffer, Double> known = costs.get(delivery);
    Double cost = known.get(IntBuffer.wrap(packs));
    if (cost == null) {
      cost = find(delivery, packs);
      if (++kept > MOST_KEPT) {
        costs.forEach(Map::clear);
        kept = 1;
      }
      known.put(IntBuffer.wrap(packs), cost);
    }
    return cost;
  }

  private int[] packs(int delivery, int[] bags) {
    int[] packs = new int[all.get(delivery).packs().size()];
    int[] packOf = all.get(delivery).packOf();
    for (int bag = 0; bag < bags.length; bag++) {
      packs[packOf[bag]] += bags[bag];
    }
    return packs;
  }

  private double find(int delivery, int[] packs) {
    if (Arrays.stream(packs).allMatch(count -> count == 0)) {
      return 0;
    }
    return ofPacks(delivery, packs)
        .map(priced -> priced.invoice() + effort())
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Money that is reckoned for an order. */
  double effort() {
    return world.scenario().policy().charges().order().toDouble();
  }

  /** Days with deliveries, nothing ordered. */
  BusyDays busyDays() {
    return new BusyDays(world.scenario().policy().charges().deliveryDay().toDouble(), all);
  }

  /** The budget, with nothing ordered. */
  OverBudget budget() {
    return new OverBudget(world, all);
  }
}
