package io.frostlot.app;

import io.frostlot.forecast.Meal;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.MovesPolicy;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Keeps;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Slot;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What has been done up to a day by a keeper who plans again and again: orders, what came of them,
 * what was eaten and thrown away. It only grows.
 */
final class Settled {
  private final World world;
  private LocalDate now;
  private int named;
  private final List<Order> orders = new ArrayList<>();
  private final Map<String, Lot> lots = new LinkedHashMap<>();
  private final Map<String, Integer> left = new HashMap<>();
  private final Map<String, PlacedLot> underWay = new LinkedHashMap<>();
  private final Map<String, Slot> orderedAs = new HashMap<>();
  private final List<Feeding> feedings = new ArrayList<>();
  private final List<Discard> discards = new ArrayList<>();
  private final Map<String, Integer> served = new HashMap<>();

  /** Nothing yet: the morning of the first planning day. */
  Settled(World world) {
    this.world = world;
    now = world.scenario().planning().from();
    for (StockLot lot : world.scenario().larder().stock()) {
      add(Lot.of(lot));
    }
    world.scenario().larder().placed().forEach(lot -> underWay.put(lot.id(), lot));
  }

  private void add(Lot lot) {
    lots.put(lot.id(), lot);
    left.put(lot.id(), lot.pieces());
  }

  /** The first day of which nothing is settled. */
  LocalDate now() {
    return now;
  }

  boolean isOrdered(Slot slot) {
    return orders.stream().anyMatch(order -> order.slot().equals(slot));
  }

  Plan plan() {
    return new Plan(orders, List.copyOf(lots.values()), feedings, discards);
  }

  /** Is any of it in hand that would do? */
  boolean isInHand(Demand demand) {
    return demand.options().stream()
        .anyMatch(option -> stock().anyMatch(lot -> lot.item().equals(option.item())));
  }

  /**
   * The world as it is seen from now on; by habit nothing is moved between freezers.
   *
   * @param demands of which those that are served already, or too late now, are left out
   */
  World ahead(Policy policy, Stream<Demand> demands, List<Slot> slots) {
    Scenario scenario = world.scenario();
    LocalDate last = scenario.planning().to();
    Scenario seen =
        scenario
            .withPlanning(new Period(now.isAfter(last) ? last : now, last))
            .withLarder(
                new Scenario.Larder(
                    scenario.larder().freezers(), stock().toList(), List.copyOf(underWay.values())))
            .withPolicy(policy.withMoves(MovesPolicy.NONE));
    return world
        .withScenario(seen)
        .withDemands(demands.flatMap(this::stillWanted).toList())
        .withSlots(slots);
  }

  private Stream<StockLot> stock() {
    return lots.values().stream()
        .filter(lot -> left.getOrDefault(lot.id(), 0) > 0 && !lot.useBy().isBefore(now))
        .map(
            lot ->
                new StockLot(
                    lot.id(),
                    lot.item(),
                    left.getOrDefault(lot.id(), 0),
                    lot.freezer(),
                    lot.earliest(),
                    new Keeps(world.bestBefore(lot), lot.useBy())));
  }

  private Stream<Demand> stillWanted(Demand demand) {
    Meal meal = demand.meal();
    return meal.days().latest().isBefore(now)
        ? Stream.empty()
        : demand.without(served.getOrDefault(meal.id(), 0)).stream();
  }

  /**
   * Does what a plan of the world ahead says for the days before a day, and places the orders of
   * those days. Where a delivery may come before or after that day, only what is before its
   * earliest arrival is done.
   */
  void follow(Plan plan, LocalDate until) {
    List<Order> placed =
        plan.orders().stream().filter(order -> order.slot().ordered().isBefore(until)).toList();
    Set<Slot> slots = new HashSet<>();
    placed.forEach(order -> slots.add(order.slot()));
    List<Lot> coming =
        plan.lots().stream()
            .filter(
                lot ->
                    lot.origin() instanceof Lot.UnderWay
                        || (lot.origin() instanceof Lot.Ordered it && slots.contains(it.slot())))
            .toList();
    LocalDate end = wholeDeliveries(coming, until);
    orders.addAll(placed);
    Map<String, String> names = new HashMap<>();
    plan.lots().stream()
        .filter(lot -> lot.origin() instanceof Lot.InHand)
        .forEach(lot -> names.put(lot.id(), ((Lot.InHand) lot.origin()).stockLot()));
    coming.forEach(lot -> receive(lot, end).forEach(name -> names.put(lot.id(), name)));
    plan.feedings().stream()
        .filter(feeding -> feeding.day().isBefore(end))
        .forEach(feeding -> feed(feeding, names));
    plan.discards().stream()
        .filter(discard -> discard.day().isBefore(end))
        .forEach(
            discard -> {
              String lot = names.getOrDefault(discard.lotId(), discard.lotId());
              discards.add(new Discard(lot, discard.day(), discard.pieces()));
              left.merge(lot, -discard.pieces(), Integer::sum);
            });
    now = end;
  }

  /** The last day up to the one given by which each delivery either has surely come or cannot. */
  private static LocalDate wholeDeliveries(List<Lot> coming, LocalDate until) {
    LocalDate end = until;
    for (int i = 0; i < coming.size(); i++) {
      for (Lot lot : coming) {
        boolean mayCome = lot.earliest().isBefore(end) && !lot.latest().isBefore(end);
        end = mayCome ? lot.earliest() : end;
      }
    }
    return end;
  }

  /** The name of the lot once it is there; none where it is still under way. */
  private List<String> receive(Lot lot, LocalDate end) {
    boolean there = lot.latest().isBefore(end);
    String name = "by habit " + ++named;
    if (!there) {
      if (lot.origin() instanceof Lot.Ordered ordered) {
        orderedAs.put(name, ordered.slot());
        underWay.put(
            name, new PlacedLot(name, lot.item(), lot.pieces(), lot.earliest(), lot.latest()));
      }
      return List.of();
    }
    Lot.Origin origin = lot.origin();
    if (origin instanceof Lot.UnderWay it) {
      underWay.remove(it.placedLot());
      origin =
          orderedAs.containsKey(it.placedLot())
              ? new Lot.Ordered(orderedAs.get(it.placedLot()))
              : origin;
    }
    add(
        new Lot(
            name,
            lot.item(),
            lot.pieces(),
            lot.freezer(),
            lot.earliest(),
            lot.latest(),
            lot.useBy(),
            origin));
    return List.of(name);
  }

  private void feed(Feeding feeding, Map<String, String> names) {
    List<Feeding.Draw> draws =
        feeding.draws().stream()
            .map(d -> new Feeding.Draw(names.getOrDefault(d.lotId(), d.lotId()), d.pieces()))
            .toList();
    feedings.add(
        new Feeding(feeding.mealId(), feeding.day(), feeding.option(), feeding.meals(), draws));
    draws.forEach(draw -> left.merge(draw.lotId(), -draw.pieces(), Integer::sum));
    served.merge(feeding.mealId(), feeding.meals(), Integer::sum);
  }
}
