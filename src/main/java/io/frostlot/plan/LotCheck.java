package io.frostlot.plan;

import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Every piece in hand, under way or ordered is in a lot, once, and every lot says of itself what is
 * true: item, freezer, arrival, use-by.
 */
final class LotCheck {
  private final World world;
  private final Plan plan;
  private final Consumer<String> breaches;
  private final Map<String, Freezer> freezers = new HashMap<>();
  private final Map<String, StockLot> stock = new LinkedHashMap<>();
  private final Map<String, PlacedLot> placed = new LinkedHashMap<>();
  private final Map<Source, Long> missing = new LinkedHashMap<>();

  /** Where pieces come from, and of what. */
  private record Source(Lot.Origin origin, String itemId) {}

  LotCheck(World world, Plan plan, Consumer<String> breaches) {
    this.world = world;
    this.plan = plan;
    this.breaches = breaches;
    Scenario.Larder larder = world.scenario().larder();
    larder.freezers().forEach(f -> freezers.put(f.name(), f));
    larder.stock().forEach(lot -> stock.put(lot.id(), lot));
    larder.placed().forEach(lot -> placed.put(lot.id(), lot));
  }

  void check() {
    stock.values().forEach(l -> expect(new Lot.InHand(l.id()), l.item().id(), l.pieces()));
    placed.values().forEach(l -> expect(new Lot.UnderWay(l.id()), l.item().id(), l.pieces()));
    checkOrders();
    Set<String> ids = new HashSet<>();
    for (Lot lot : plan.lots()) {
      if (!ids.add(lot.id()) || lot.pieces() < 1) {
        breach(lot, "is there twice or without pieces");
      }
      expect(lot.origin(), lot.item().id(), -(long) lot.pieces());
      checkLot(lot);
    }
    missing.forEach(
        (source, pieces) -> {
          String what = Math.abs(pieces) + " pieces of " + source.itemId();
          if (pieces != 0) {
            breaches.accept(
                day(source.origin())
                    + ": "
                    + what
                    + (pieces > 0 ? " that came are in no lot" : " more than came are in lots")
                    + " ("
                    + source.origin()
                    + ").");
          }
        });
  }

  private void expect(Lot.Origin origin, String itemId, long pieces) {
    missing.merge(new Source(origin, itemId), pieces, Long::sum);
  }

  private LocalDate day(Lot.Origin origin) {
    return origin instanceof Lot.Ordered ordered
        ? ordered.slot().arrivesEarliest()
        : world.scenario().planning().from();
  }

  private void checkOrders() {
    record OrderDay(String supplier, LocalDate day) {}

    Set<Slot> slots = new HashSet<>(world.slots());
    Set<OrderDay> days = new HashSet<>();
    for (Order order : plan.orders()) {
      Slot slot = order.slot();
      if (!slots.contains(slot)) {
        breaches.accept(slot.ordered() + ": " + slot.supplier() + " has no such delivery.");
      }
      if (!days.add(new OrderDay(slot.supplier(), slot.ordered()))) {
        breaches.accept(slot.ordered() + ": a second order from " + slot.supplier() + ".");
      }
      order
          .lines()
          .forEach(
              line ->
                  line.pack()
                      .parts()
                      .forEach(
                          part ->
                              expect(
                                  new Lot.Ordered(slot),
                                  part.item().id(),
                                  (long) line.packs() * part.pieces())));
    }
  }

  private void checkLot(Lot lot) {
    Freezer freezer = freezers.get(lot.firstFreezer());
    Freezer last = freezers.get(lot.freezer());
    if (freezer == null || last == null) {
      breach(lot, "lies in a freezer that there is not, " + lot.freezer());
    } else if (lot.isMoved()) {
      checkMoved(lot, freezer, last);
    } else if (lot.origin() instanceof Lot.InHand inHand) {
      StockLot own = stock.get(inHand.stockLot());
      if (own != null
          && !(own.item().equals(lot.item())
              && own.freezer().equals(lot.freezer())
              && own.useBy().equals(lot.useBy()))) {
        breach(lot, "is not as it lies there: " + own);
      }
    } else {
      checkDelivered(lot, freezer);
    }
  }

  /** The share of life that is left where it lay is left where it comes, in whole days. */
  private void checkMoved(Lot lot, Freezer from, Freezer into) {
    LocalDate day = lot.move().day();
    int every = world.scenario().policy().moves().everyDays();
    long sinceFirst = world.scenario().planning().from().until(day, ChronoUnit.DAYS);
    if (every == 0
        || sinceFirst % every != 0
        || !world.scenario().planning().contains(day)
        || !into.inUse()
        || from.equals(into)
        || !world.joint().keeperOf(from).equals(world.joint().keeperOf(into))) {
      breach(lot, "may not be moved from " + from.name() + " to " + into.name() + " on " + day);
    }
    StockLot own = lot.origin() instanceof Lot.InHand it ? stock.get(it.stockLot()) : null;
    LocalDate there = own == null ? from.useBy(lot.item(), lot.freshFrom()) : own.useBy();
    if (day.isAfter(there) || (own == null && !day.isAfter(lot.latest()))) {
      breach(lot, "is not there to be moved on " + day);
      return;
    }
    checkLot(lot.stayedUntil(there));
    long left = there.toEpochDay() - day.toEpochDay() + 1;
    LocalDate useBy =
        day.plusDays(left * into.lifeDays(lot.item()) / from.lifeDays(lot.item()) - 1);
    if (!lot.useBy().equals(useBy)) {
      breach(lot, "is to be used by " + useBy + ", not " + lot.useBy());
    }
  }

  private void checkDelivered(Lot lot, Freezer freezer) {
    if (!freezer.inUse()) {
      breach(lot, "is put into " + freezer.name() + ", which is not in use");
    }
    LocalDate useBy = freezer.useBy(lot.item(), lot.freshFrom());
    if (!lot.useBy().equals(useBy)) {
      breach(lot, "is to be used by " + useBy + ", not " + lot.useBy());
    }
    if (!arrivesAsStated(lot, freezer)) {
      breach(lot, "does not arrive from " + lot.earliest() + " to " + lot.latest());
    }
  }

  /** True for what is under way under a name unknown here too: its pieces are missed elsewhere. */
  private boolean arrivesAsStated(Lot lot, Freezer freezer) {
    if (lot.origin() instanceof Lot.Ordered ordered) {
      return world
          .joint()
          .comings(ordered.slot(), freezer)
          .contains(new Joint.Coming(lot.earliest(), lot.latest()));
    }
    PlacedLot own = placed.get(((Lot.UnderWay) lot.origin()).placedLot());
    return own == null
        || (world.joint().isOwn(own.id(), freezer)
            && lot.earliest().equals(own.arrivesEarliest())
            && lot.latest().equals(own.arrivesLatest()));
  }

  private void breach(Lot lot, String what) {
    breaches.accept(lot.earliest() + ": lot " + lot.id() + " " + what + ".");
  }
}
