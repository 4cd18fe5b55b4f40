package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What several keepers would order by themselves, put together as a plan of their joint world:
 * orders of one day are one order, every bag stays whole with its keeper; where the others collect
 * on set days only, what they want comes with a delivery that is in time for one ({@link Places}).
 * Where there are not as many bags as all want together, or they come too late, some meals are left
 * without. Whether it can be followed there is for the rules to judge.
 */
public final class PutTogether {
  private final World world;
  private final Places places;
  private final Map<Slot, Map<Pack, Order.Line>> lines = new TreeMap<>();
  private final Map<Slot, Set<String>> promotions = new TreeMap<>();
  private final List<Lot> lots = new ArrayList<>();
  private final List<Feeding> feedings = new ArrayList<>();
  private final List<Discard> discards = new ArrayList<>();

  private PutTogether(World world, Places places) {
    this.world = world;
    this.places = places;
  }

  /** Empty where something of a plan is not to be had in the joint world. */
  public static Optional<Plan> of(World joint, Map<Keeper, Plan> plans) {
    PutTogether together = new PutTogether(joint, Places.of(joint, plans));
    for (Map.Entry<Keeper, Plan> own : plans.entrySet()) {
      if (!together.add(own.getKey(), own.getValue())) {
        return Optional.empty();
      }
    }
    return Optional.of(together.plan());
  }

  private boolean add(Keeper keeper, Plan plan) {
    for (Order order : plan.orders()) {
      for (Order.Line line : order.lines()) {
        if (!order(keeper, order, line)) {
          return false;
        }
      }
    }
    for (Lot lot : plan.lots()) {
      if (!lot(keeper, lot)) {
        return false;
      }
    }
    for (Feeding feeding : plan.feedings()) {
      Optional<Item> item = item(keeper, feeding.option().item());
      if (item.isEmpty()) {
        return false;
      }
      feedings.add(
          new Feeding(
              keeper.own(feeding.mealId()),
              feeding.day(),
              new Option(item.get(), feeding.option().pieces()),
              feeding.meals(),
              feeding.draws().stream()
                  .map(draw -> new Feeding.Draw(keeper.own(draw.lotId()), draw.pieces()))
                  .toList()));
    }
    for (Discard some : plan.discards()) {
      discards.add(new Discard(keeper.own(some.lotId()), some.day(), some.pieces()));
    }
    return true;
  }

  private boolean order(Keeper keeper, Order order, Order.Line line) {
    Optional<Places.Place> place = places.of(keeper, order.slot(), line.pack().item());
    if (place.isEmpty()) {
      return places.mayLeaveOut();
    }
    Slot slot = place.get().slot();
    promotions.computeIfAbsent(slot, s -> new HashSet<>()).addAll(order.promotions());
    Optional<Pack> pack =
        world.supplier(slot.supplier()).sheet().packs().stream()
            .filter(it -> it.id().equals(line.pack().id()))
            .findFirst();
    pack.ifPresent(
        it ->
            lines
                .computeIfAbsent(slot, s -> new TreeMap<>(Comparator.comparing(Pack::id)))
                .merge(it, new Order.Line(it, line.packs(), line.underSale()), PutTogether::both));
    return pack.isPresent();
  }

  private static Order.Line both(Order.Line one, Order.Line other) {
    TreeMap<String, Integer> underSale = new TreeMap<>(one.underSale());
    other.underSale().forEach((sale, packs) -> underSale.merge(sale, packs, Integer::sum));
    return new Order.Line(one.pack(), one.packs() + other.packs(), underSale);
  }

  private boolean lot(Keeper keeper, Lot lot) {
    Optional<Item> item = item(keeper, lot.item());
    if (item.isEmpty()) {
      return false;
    }
    if (lot.origin() instanceof Lot.Ordered ordered) {
      Optional<Places.Place> place = places.of(keeper, ordered.slot(), lot.item());
      place.ifPresent(
          it -> lots.add(made(keeper, lot, item.get(), it.coming(), new Lot.Ordered(it.slot()))));
      return place.isPresent() || places.mayLeaveOut();
    }
    Lot.Origin origin =
        lot.origin() instanceof Lot.InHand hand
            ? new Lot.InHand(keeper.own(hand.stockLot()))
            : new Lot.UnderWay(keeper.own(((Lot.UnderWay) lot.origin()).placedLot()));
    Joint.Coming same = new Joint.Coming(lot.earliest(), lot.latest());
    lots.add(made(keeper, lot, item.get(), same, origin));
    return true;
  }

  private static Lot made(
      Keeper keeper, Lot lot, Item item, Joint.Coming coming, Lot.Origin origin) {
    Lot staying =
        new Lot(
            keeper.own(lot.id()),
            item,
            lot.pieces(),
            keeper.own(lot.firstFreezer()),
            coming.earliest(),
            coming.latest(),
            lot.useBy(),
            origin);
    return lot.isMoved()
        ? staying.movedInto(keeper.own(lot.freezer()), lot.move().day(), lot.useBy())
        : staying;
  }

  private Optional<Item> item(Keeper keeper, Item item) {
    return Optional.ofNullable(world.items().get(item.id()))
        .or(() -> Optional.ofNullable(world.items().get(keeper.own(item.id()))));
  }

  /** Meals wait for what comes later; where it comes too late they are fed otherwise, or not. */
  private void waitOrLeaveOut() {
    Map<String, Lot> there = new HashMap<>();
    lots.replaceAll(lot -> lot.isMoved() ? lot : lot.withUseBy(world.keeps(lot).useBy()));
    lots.forEach(lot -> there.put(lot.id(), lot));
    List<Feeding> before = List.copyOf(feedings);
    feedings.clear();
    List<Feeding> late = new ArrayList<>();
    before.forEach(
        feeding -> later(feeding, there).ifPresentOrElse(feedings::add, () -> late.add(feeding)));
    late.forEach(new FedOtherwise(world, lots, feedings)::feed);
    discards.removeIf(
        some ->
            !there.containsKey(some.lotId())
                || some.day().isBefore(there.get(some.lotId()).takenFrom()));
  }

  /** The same meal as soon as all of it is there; empty where that is too late. */
  private Optional<Feeding> later(Feeding feeding, Map<String, Lot> there) {
    LocalDate day = feeding.day();
    for (Feeding.Draw draw : feeding.draws()) {
      Optional<Lot> lot = Optional.ofNullable(there.get(draw.lotId()));
      LocalDate from = lot.map(Lot::takenFrom).orElse(LocalDate.MAX);
      day = from.isAfter(day) ? from : day;
    }
    LocalDate eaten = day;
    boolean fresh =
        feeding.draws().stream()
            .map(draw -> there.get(draw.lotId()))
            .allMatch(lot -> lot != null && !eaten.isAfter(lot.useBy()));
    Demand demand = world.demandsById().get(feeding.mealId());
    return fresh && demand != null && demand.meal().days().contains(eaten)
        ? Optional.of(
            new Feeding(
                feeding.mealId(), eaten, feeding.option(), feeding.meals(), feeding.draws()))
        : Optional.empty();
  }

  private Plan plan() {
    if (places.mayLeaveOut()) {
      waitOrLeaveOut();
    }
    List<Order> orders = new ArrayList<>();
    Rationing rationing = new Rationing(lots, feedings, discards);
    lines.forEach(
        (slot, of) -> {
          List<Order.Line> all =
              of.values().stream()
                  .flatMap(line -> rationing.asMuchAsThereIs(slot, line).stream())
                  .toList();
          if (all.isEmpty()) {
            return;
          }
          orders.add(
              new Order(
                  slot,
                  all,
                  new TreeSet<>(promotions.get(slot)),
                  PlanBuilder.boxes(world.supplier(slot.supplier()), all)));
        });
    List<Feeding> byDay = feedings.stream().sorted(Comparator.comparing(Feeding::day)).toList();
    List<Discard> thrown = discards.stream().sorted(Comparator.comparing(Discard::day)).toList();
    return new Plan(orders, lots, byDay, thrown);
  }
}
