package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What several keepers would order by themselves, put together as a plan of their joint world:
 * orders of one day are one order, every bag stays whole with its keeper. Where there are not as
 * many bags as all want together, some meals are left without. Whether it can be followed there is
 * for the rules to judge.
 */
public final class PutTogether {
  private final World world;
  private final Map<Slot, Map<Pack, Order.Line>> lines = new TreeMap<>();
  private final Map<Slot, Set<String>> promotions = new TreeMap<>();
  private final List<Lot> lots = new ArrayList<>();
  private final List<Feeding> feedings = new ArrayList<>();
  private final List<Discard> discards = new ArrayList<>();

  private PutTogether(World world) {
    this.world = world;
  }

  /** Empty where something of a plan is not to be had in the joint world. */
  public static Optional<Plan> of(World joint, Map<Keeper, Plan> plans) {
    PutTogether together = new PutTogether(joint);
    for (Map.Entry<Keeper, Plan> own : plans.entrySet()) {
      if (!together.add(own.getKey(), own.getValue())) {
        return Optional.empty();
      }
    }
    return Optional.of(together.plan());
  }

  private boolean add(Keeper keeper, Plan plan) {
    for (Order order : plan.orders()) {
      Optional<Slot> slot = slot(keeper, order.slot());
      if (slot.isEmpty() || !order(slot.get(), order)) {
        return false;
      }
    }
    for (Lot lot : plan.lots()) {
      Optional<Lot> own = lot(keeper, lot);
      if (own.isEmpty()) {
        return false;
      }
      lots.add(own.get());
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
    return true;
  }

  /**
   * The delivery of that order day, where the keeper fetches itself its own, else the joint one.
   */
  private Optional<Slot> slot(Keeper keeper, Slot own) {
    String fetching = keeper.fetching(own.supplier());
    boolean fetched = keeper.name().equals(world.joint().buyers().get(fetching));
    String supplier = fetched ? fetching : own.supplier();
    return world.slots().stream()
        .filter(slot -> slot.supplier().equals(supplier) && slot.ordered().equals(own.ordered()))
        .findFirst();
  }

  private boolean order(Slot slot, Order order) {
    Supplier supplier = world.supplier(slot.supplier());
    promotions.computeIfAbsent(slot, s -> new HashSet<>()).addAll(order.promotions());
    Map<Pack, Order.Line> of =
        lines.computeIfAbsent(slot, s -> new TreeMap<>(Comparator.comparing(Pack::id)));
    for (Order.Line line : order.lines()) {
      Optional<Pack> pack =
          supplier.sheet().packs().stream()
              .filter(it -> it.id().equals(line.pack().id()))
              .findFirst();
      if (pack.isEmpty()) {
        return false;
      }
      of.merge(
          pack.get(),
          new Order.Line(pack.get(), line.packs(), line.underSale()),
          PutTogether::both);
    }
    return true;
  }

  private static Order.Line both(Order.Line one, Order.Line other) {
    TreeMap<String, Integer> underSale = new TreeMap<>(one.underSale());
    other.underSale().forEach((sale, packs) -> underSale.merge(sale, packs, Integer::sum));
    return new Order.Line(one.pack(), one.packs() + other.packs(), underSale);
  }

  private Optional<Lot> lot(Keeper keeper, Lot lot) {
    Freezer freezer = world.freezer(keeper.own(lot.firstFreezer()));
    Optional<Item> item = item(keeper, lot.item());
    if (item.isEmpty()) {
      return Optional.empty();
    }
    if (!(lot.origin() instanceof Lot.Ordered ordered)) {
      Lot.Origin origin =
          lot.origin() instanceof Lot.InHand hand
              ? new Lot.InHand(keeper.own(hand.stockLot()))
              : new Lot.UnderWay(keeper.own(((Lot.UnderWay) lot.origin()).placedLot()));
      Joint.Coming same = new Joint.Coming(lot.earliest(), lot.latest());
      return Optional.of(made(keeper, lot, item.get(), same, origin));
    }
    return slot(keeper, ordered.slot())
        .flatMap(
            slot ->
                world.joint().comings(slot, freezer).stream()
                    .findFirst()
                    .map(coming -> made(keeper, lot, item.get(), coming, new Lot.Ordered(slot))));
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

  private Plan plan() {
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
