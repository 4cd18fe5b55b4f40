package io.frostlot.plan;

import io.frostlot.storage.PlacedLot;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The orders of an earlier plan, as far as they are due soon in a world that has moved on.
 *
 * @param leftOut sentences on those that would be due soon, or should be under way, but can be
 *     neither kept nor changed
 */
public record EarlierOrders(DueSoon dueSoon, List<String> leftOut) {
  public EarlierOrders {
    leftOut = List.copyOf(leftOut);
  }

  /** None where the policy lets anything be changed. */
  public static EarlierOrders of(World world, Outline earlier) {
    Policy.Calm calm = world.scenario().policy().ordering().calm();
    if (calm.isNone()) {
      return new EarlierOrders(DueSoon.NONE, List.of());
    }
    LocalDate from = world.scenario().planning().from();
    Period soon = new Period(from, from.plusDays(calm.days()));
    List<DueSoon.Due> due = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    for (Outline.Ordered order : earlier.orders()) {
      Place place = new Place(world, order);
      if (order.orderBy().isAfter(soon.to()) || place.isUnderWay() || place.hasCome()) {
        continue;
      }
      Optional<String> hindered = place.hindered(soon);
      hindered.ifPresentOrElse(
          why -> leftOut.add("The earlier plan's order " + place.name() + " is not kept: " + why),
          () -> due.add(new DueSoon.Due(place.slot().orElseThrow(), order.packs())));
    }
    due.sort(Comparator.comparing(DueSoon.Due::slot));
    return new EarlierOrders(new DueSoon(soon, due, calm.charge()), leftOut);
  }

  /** Where an earlier order stands in the world. */
  private record Place(World world, Outline.Ordered order) {
    private Optional<Supplier> supplier() {
      return world.scenario().suppliers().stream()
          .filter(supplier -> supplier.id().equals(order.supplier()))
          .findFirst();
    }

    Optional<Slot> slot() {
      return world.slots().stream()
          .filter(slot -> slot.supplier().equals(order.supplier()))
          .filter(slot -> slot.ordered().equals(order.orderBy()))
          .filter(slot -> slot.arrivesEarliest().equals(order.arrives()))
          .findFirst();
    }

    private List<Pack> rows() {
      return supplier().stream().flatMap(it -> it.sheet().packs().stream()).toList();
    }

    /** Is any of its prey among what is placed, to arrive when it would? */
    boolean isUnderWay() {
      LocalDate latest = slot().map(Slot::arrivesLatest).orElse(order.arrives());
      Period arrives = new Period(order.arrives(), latest);
      List<String> items =
          rows().stream()
              .filter(pack -> order.packs().containsKey(pack.id()))
              .map(pack -> pack.item().id())
              .toList();
      List<PlacedLot> placed = world.scenario().larder().placed();
      return placed.stream()
          .filter(lot -> items.contains(lot.item().id()))
          .anyMatch(
              lot -> arrives.overlaps(new Period(lot.arrivesEarliest(), lot.arrivesLatest())));
    }

    /** Then it was placed, or forgotten, and is in stock or nowhere. */
    boolean hasCome() {
      return order.arrives().isBefore(world.scenario().planning().from());
    }

    String name() {
      return "from %s by %s"
          .formatted(supplier().map(Supplier::name).orElse(order.supplier()), order.orderBy());
    }

    /** Why it can be neither kept nor changed. */
    Optional<String> hindered(Period soon) {
      List<String> sold = rows().stream().map(Pack::id).toList();
      if (supplier().isEmpty()) {
        return Optional.of("the scenario has no such supplier.");
      }
      if (order.orderBy().isBefore(soon.from())) {
        return Optional.of("its day is past. If it was placed, write it into placed.csv.");
      }
      if (slot().isEmpty()) {
        return Optional.of("it cannot be ordered or received on its days now.");
      }
      return order.packs().keySet().stream()
          .filter(pack -> !sold.contains(pack))
          .findFirst()
          .map(pack -> "the price sheet has no " + pack + " now.");
    }
  }
}
