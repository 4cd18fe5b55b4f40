package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Alike;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/**
 * How many packs of a row one order could ever use: enough for every meal in reach of its life, and
 * as many more as a safety margin may ask for, as are pledged or were ordered by an earlier plan,
 * or as may pay by reaching a price step, a group of a sale or an order value. No optimum is lost:
 * beyond that a pack adds cost and room only.
 */
final class UsefulPacks {
  private static final int FREE_PACKS = 1000;
  private final Map<Eaten, TreeMap<Integer, Long>> piecesByDay = new HashMap<>();
  private final Map<Eaten, Long> reserves = new HashMap<>();
  private final Set<String> eaters;
  private final World world;
  private final int lastDay;
  private final int longestLife;
  private final int mostLeeway;
  private final Policy.Safety safety;
  private final int reserveDays;
  private final long planned;

  private record Eaten(String keeper, String itemId) {}

  UsefulPacks(World world) {
    this.world = world;
    lastDay = Timeline.lastDay(world);
    longestLife =
        world.scenario().larder().freezers().stream()
            .filter(Freezer::inUse)
            .mapToInt(f -> Math.max(f.life().days(), f.life().smallDays()))
            .max()
            .orElse(0);
    mostLeeway =
        world.meals().alike().stream()
            .map(alike -> alike.first().meal().days())
            .mapToInt(d -> Timeline.day(d.latest()) - Timeline.day(d.earliest()))
            .max()
            .orElse(0);
    safety = world.scenario().policy().safety();
    reserveDays = new Reserves(world).days();
    planned =
        world.demands().stream()
            .filter(demand -> !demand.tail())
            .mapToLong(demand -> (long) demand.meal().count() * demand.meal().prey().mostPieces())
            .sum();
    world.meals().alike().forEach(this::count);
    eaters = piecesByDay.keySet().stream().map(Eaten::keeper).collect(Collectors.toSet());
  }

  private void count(Alike alike) {
    if (world.joint().keepers().isEmpty()) {
      count(alike.first(), alike.count());
    } else {
      alike.members().forEach(demand -> count(demand, demand.meal().count()));
    }
  }

  /** Adds the most pieces of each item that meals could take, on their latest day. */
  private void count(Demand demand, int meals) {
    Map<String, Integer> most = new HashMap<>();
    for (Option option : demand.options()) {
      most.merge(option.item().id(), option.pieces(), Math::max);
    }
    int day = Math.min(Timeline.day(demand.meal().days().latest()), lastDay);
    String keeper = world.joint().keeperOf(demand);
    most.forEach(
        (item, pieces) ->
            piecesByDay
                .computeIfAbsent(new Eaten(keeper, item), k -> new TreeMap<>())
                .merge(day, (long) pieces * meals, Long::sum));
  }

  /** Most packs of a row in the order of a slot. */
  int most(Slot slot, Supplier supplier, Pack pack) {
    if (!supplier.canPack(pack)) {
      return 0;
    }
    long packs = 0;
    for (String keeper : eaters) {
      packs += pack.parts().stream().mapToLong(part -> useful(slot, keeper, part)).max().orElse(0);
    }
    long padding = Math.max(padding(supplier, slot, pack), asked(slot, pack));
    if (packs == 0 && padding == 0) {
      return 0;
    }
    long most = Math.min(packs + padding, OrderRoom.most(world, slot, pack));
    return (int) Math.min(most, pack.available().perDelivery());
  }

  /** Packs for which a part of them could be of use. */
  private long useful(Slot slot, String keeper, Pack.Part part) {
    long pieces = usefulPieces(slot, new Eaten(keeper, part.item().id()));
    return (pieces + part.pieces() - 1) / part.pieces();
  }

  /** Packs that are pledged, or that an earlier plan orders. */
  private long asked(Slot slot, Pack pack) {
    LongStream pledged =
        world.pledges().stream()
            .filter(pledge -> pledge.counts(slot, pack))
            .mapToLong(pledge -> pledge.packs().least());
    LongStream before =
        world.dueSoon().orders().stream()
            .filter(due -> due.slot().equals(slot))
            .mapToLong(due -> due.packs().getOrDefault(pack.id(), 0));
    return LongStream.concat(pledged, before).max().orElse(0);
  }

  private long usefulPieces(Slot slot, Eaten eaten) {
    TreeMap<Integer, Long> byDay = piecesByDay.get(eaten);
    if (byDay == null || longestLife == 0) {
      return 0;
    }
    int from = Timeline.day(slot.arrivesLatest());
    int to = Timeline.day(slot.arrivesEarliest()) + longestLife - 1 + mostLeeway + reserveDays;
    long eatable =
        byDay.subMap(from, true, Math.max(from, to), true).values().stream()
            .mapToLong(n -> n)
            .sum();
    return eatable == 0 ? 0 : eatable + reserves.computeIfAbsent(eaten, e -> reserve(byDay));
  }

  /**
   * Pieces that may lie there only for safety: a margin of all that is eaten, some days' cover, and
   * what is needed outside each of two freezers or more.
   */
  private long reserve(NavigableMap<Integer, Long> byDay) {
    long margin = (long) Math.ceil(safety.margin().fraction().doubleValue() * planned);
    return margin + mostWithin(safety.coverDays(), byDay) + 2 * mostWithin(reserveDays, byDay);
  }

  /** The most that is eaten in so many days in a row. */
  private long mostWithin(int days, NavigableMap<Integer, Long> byDay) {
    long most = 0;
    for (int day : days == 0 ? Set.<Integer>of() : byDay.keySet()) {
      long within =
          byDay.subMap(day, true, day + days + mostLeeway, true).values().stream()
              .mapToLong(n -> n)
              .sum();
      most = Math.max(most, within);
    }
    return most;
  }

  /**
   * Packs beyond use that may pay: up to the last step of the row's break, a group of a sale, a
   * minimum order, and as many as cost no more than all that an order value can gain.
   */
  private static long padding(Supplier supplier, Slot slot, Pack pack) {
    long most = 0;
    List<PriceBreak.Step> steps = supplier.breakOf(pack).steps();
    if (!steps.isEmpty()) {
      most = steps.get(steps.size() - 1).fromPacks();
    }
    for (Sale sale : supplier.salesOn(slot)) {
      if (sale.covers(pack) && sale.terms() instanceof Sale.TakeAndPay group) {
        most = Math.max(most, group.take());
      }
    }
    double price = leastPrice(supplier, slot, pack);
    double gain = gain(supplier, slot);
    double minimum = supplier.terms().minimum().from().toDouble();
    if (price <= 0) {
      return gain + minimum > 0 ? Math.max(most, FREE_PACKS) : most;
    }
    return Math.max(most, (long) Math.max(gain / price, Math.ceil(minimum / price)));
  }

  /** The least that one more pack may cost. */
  private static double leastPrice(Supplier supplier, Slot slot, Pack pack) {
    double step = pack.price().toDouble();
    for (PriceBreak.Step lower : supplier.breakOf(pack).steps()) {
      step = Math.min(step, lower.price().toDouble());
    }
    double least = step;
    for (Sale sale : supplier.salesOn(slot)) {
      if (!sale.covers(pack)) {
        continue;
      }
      if (sale.terms() instanceof Sale.PercentOff off) {
        least = Math.min(least, step * off.percent().complement().doubleValue());
      } else if (sale.terms() instanceof Sale.PriceOf of) {
        least = Math.min(least, of.price().toDouble());
      } else {
        least = 0;
      }
    }
    return least;
  }

  /**
   * The most that reaching an order value could save: charges waived, and discounts just reached.
   */
  private static double gain(Supplier supplier, Slot slot) {
    double gain = 0;
    if (!supplier.terms().freeShipping().isEmpty()) {
      gain += ShippingCharge.most(supplier, slot);
    }
    for (OrderTerms.Discount discount : supplier.discountsOn(slot)) {
      double most = 0;
      for (OrderTerms.Tier tier : discount.tiers()) {
        double value = tier.from().toDouble();
        most =
            Math.max(
                most, value * tier.percent().fraction().doubleValue() + tier.amount().toDouble());
      }
      gain += most;
    }
    double taxed = 1 + supplier.terms().tax().rate().fraction().doubleValue();
    return gain * taxed + (gain > 0 ? 1 : 0);
  }
}
