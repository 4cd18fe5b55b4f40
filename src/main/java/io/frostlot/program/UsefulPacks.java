package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Demand;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.BoxFit;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Item;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * How many packs of a row one order could ever use: enough for every meal in reach of its life, and
 * as many more as may pay by reaching a price step, a group of a sale or an order value. No optimum is
 * lost: beyond that a pack adds cost and room only.
 */
final class UsefulPacks {
  private final Timeline timeline;
  private final Map<String, TreeMap<Integer, Long>> piecesByDay = new HashMap<>();
  private final int longestLife;
  private final int mostLeeway;

  UsefulPacks(World world, Timeline timeline) {
    this.timeline = timeline;
    longestLife =
        world.scenario().larder().freezers().stream()
            .filter(Freezer::inUse)
            .mapToInt(f -> Math.max(f.life().days(), f.life().smallDays()))
            .max()
            .orElse(0);
    mostLeeway =
        world.demands().stream()
            .map(d -> d.meal().days())
            .mapToInt(d -> Timeline.day(d.latest()) - Timeline.day(d.earliest()))
            .max()
            .orElse(0);
    world.demands().forEach(this::count);
  }

  /** Adds the most pieces of each item that a meal could take, on its latest day. */
  private void count(Demand demand) {
    Map<Item, Integer> most = new HashMap<>();
    for (Option option : demand.options()) {
      most.merge(option.item(), option.pieces(), Math::max);
    }
    int day = Math.min(Timeline.day(demand.meal().days().latest()), timeline.last());
    most.forEach((item, pieces) ->
        piecesByDay
            .computeIfAbsent(item.id(), k -> new TreeMap<>())
            .merge(day, (long) pieces * demand.meal().count(), Long::sum));
  }

  /** Most packs of a row in the order of a slot. */
  int most(Slot slot, Supplier supplier, Pack pack) {
    if (!supplier.isPickUp()
        && supplier.boxing().way() == Boxing.Way.WHOLE_PACKS
        && !BoxFit.fits(pack, supplier.boxing().limits())) {
      return 0;
    }
    long pieces = usefulPieces(slot, pack.item());
    long packs = (pieces + pack.pieces() - 1) / pack.pieces();
    long padding = padding(supplier, pack);
    if (pieces == 0 && padding == 0) {
      return 0;
    }
    return (int) Math.min(packs + padding, pack.available().perDelivery());
  }

  private long usefulPieces(Slot slot, Item item) {
    TreeMap<Integer, Long> byDay = piecesByDay.get(item.id());
    if (byDay == null || longestLife == 0) {
      return 0;
    }
    int from = Timeline.day(slot.arrivesLatest());
    int to = Timeline.day(slot.arrivesEarliest()) + longestLife - 1 + mostLeeway;
    return byDay.subMap(from, true, Math.max(from, to), true).values().stream().mapToLong(n -> n).sum();
  }

  /** Packs beyond use that may pay: a step, a group, or an order value reached by this row alone. */
  private static long padding(Supplier supplier, Pack pack) {
    long most = 0;
    for (PriceBreak steps : supplier.sheet().breaks()) {
      if (steps.packId().equals(pack.id())) {
        most = Math.max(most, steps.steps().get(steps.steps().size() - 1).fromPacks());
      }
    }
    for (Sale sale : supplier.sheet().sales()) {
      if (sale.covers(pack) && sale.terms() instanceof Sale.TakeAndPay group) {
        most = Math.max(most, group.take());
      }
    }
    Money value = highestOrderValue(supplier.terms());
    if (value.compareTo(Money.ZERO) > 0 && !pack.price().isZero()) {
      most = Math.max(most, (long) Math.ceil(2 * value.toDouble() / pack.price().toDouble()) + 1);
    }
    return most;
  }

  private static Money highestOrderValue(OrderTerms terms) {
    Money highest = terms.minimum().from();
    for (OrderTerms.Discount discount : terms.discounts()) {
      for (OrderTerms.Tier tier : discount.tiers()) {
        highest = highest.compareTo(tier.from()) < 0 ? tier.from() : highest;
      }
    }
    for (OrderTerms.FreeShipping free : terms.freeShipping()) {
      highest = highest.compareTo(free.threshold().from()) < 0 ? free.threshold().from() : highest;
    }
    return highest;
  }
}
