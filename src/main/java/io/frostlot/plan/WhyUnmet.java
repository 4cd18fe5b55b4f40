package io.frostlot.plan;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Says why a meal that could be of an item is not. */
public final class WhyUnmet {
  private final World world;
  private final Plan plan;
  private final Levels levels;

  /** Why. */
  public enum Reason {
    /** Pieces are there, and other meals get them. */
    OTHERS_GET_IT,
    /** Nothing new may be put into any freezer. */
    NO_FREEZER,
    /** No delivery of it can be there in time. */
    NOT_IN_TIME,
    /** What can be there in time does not keep until then. */
    TOO_OLD,
    /**
     * Beside what others eat no freezer has room for it when it could come, or until it is eaten.
     */
    NO_ROOM,
    /** Nobody sells it, and what there was is gone. */
    NOT_SOLD,
    /** None of these. */
    UNKNOWN
  }

  public WhyUnmet(World world, Plan plan) {
    this.world = world;
    this.plan = plan;
    levels = new Levels(plan);
  }

  /** Of the item nearest to what is intended; it must be an option of the meal. */
  public Reason of(Outcome.Missed missed) {
    Item item = world.items().get(missed.nearestItem());
    Meal.Days days = missed.demand().meal().days();
    List<Lot> lots = plan.lots().stream().filter(lot -> lot.item().equals(item)).toList();
    List<Lot> there = lots.stream().filter(lot -> isThere(lot, days)).toList();
    if (!there.isEmpty()) {
      int left = there.stream().mapToInt(levels::neverEaten).sum();
      return left < pieces(missed.demand(), item) ? Reason.OTHERS_GET_IT : Reason.UNKNOWN;
    }
    Set<String> suppliers = suppliers(item);
    if (suppliers.isEmpty()) {
      boolean later = lots.stream().anyMatch(lot -> lot.takenFrom().isAfter(days.latest()));
      return later ? Reason.NOT_IN_TIME : Reason.NOT_SOLD;
    }
    return ofDeliveries(item, days, suppliers);
  }

  private Reason ofDeliveries(Item item, Meal.Days days, Set<String> suppliers) {
    List<Freezer> freezers =
        world.scenario().larder().freezers().stream().filter(Freezer::inUse).toList();
    if (freezers.isEmpty()) {
      return Reason.NO_FREEZER;
    }
    List<Slot> inTime =
        world.slots().stream()
            .filter(slot -> suppliers.contains(slot.supplier()))
            .filter(slot -> !slot.arrivesLatest().isAfter(days.latest()))
            .toList();
    if (inTime.isEmpty()) {
      return Reason.NOT_IN_TIME;
    }
    List<Coming> keeping =
        inTime.stream().flatMap(slot -> coming(item, slot, days, freezers).stream()).toList();
    if (keeping.isEmpty()) {
      return Reason.TOO_OLD;
    }
    RoomBeside room = new RoomBeside(world, plan, levels);
    return keeping.stream().anyMatch(it -> room.mayTake(item, it))
        ? Reason.UNKNOWN
        : Reason.NO_ROOM;
  }

  /** A delivery from which the meal could be fed, the first day on which, and where it keeps. */
  record Coming(Slot slot, LocalDate eaten, List<Freezer> freezers) {}

  private static Optional<Coming> coming(
      Item item, Slot slot, Meal.Days days, List<Freezer> freezers) {
    List<Freezer> keeping =
        freezers.stream().filter(it -> fed(it, item, slot, days).isPresent()).toList();
    return keeping.stream()
        .flatMap(it -> fed(it, item, slot, days).stream())
        .findFirst()
        .map(day -> new Coming(slot, day, keeping));
  }

  private static Optional<LocalDate> fed(Freezer freezer, Item item, Slot slot, Meal.Days days) {
    LocalDate useBy = freezer.keeps(item, slot.arrivesEarliest()).useBy();
    return useBy.isBefore(slot.arrivesLatest())
        ? Optional.empty()
        : days.first(new Period(slot.arrivesLatest(), useBy));
  }

  private boolean isThere(Lot lot, Meal.Days days) {
    return new Period(days.earliest(), days.latest())
        .days()
        .filter(days::contains)
        .filter(day -> !day.isBefore(lot.takenFrom()))
        .anyMatch(day -> levels.beforeMeals(lot, day) > 0);
  }

  private static int pieces(Demand demand, Item item) {
    return demand.options().stream()
        .filter(option -> option.item().equals(item))
        .mapToInt(Option::pieces)
        .min()
        .orElseThrow();
  }

  private Set<String> suppliers(Item item) {
    return world.scenario().suppliers().stream()
        .filter(
            supplier -> supplier.sheet().packs().stream().anyMatch(pack -> pack.piecesOf(item) > 0))
        .map(supplier -> supplier.id())
        .collect(Collectors.toSet());
  }
}
