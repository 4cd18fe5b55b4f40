package io.frostlot.plan;

import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/** Follows a plan through its days with every delivery on one of its possible days. */
final class DayByDay {
  private final World world;
  private final Period planning;
  private final Consumer<String> breaches;
  private final Map<String, Pieces> byLot = new LinkedHashMap<>();
  private final Map<String, Room> rooms = new LinkedHashMap<>();
  private final Map<LocalDate, List<Pieces>> leaving = new HashMap<>();
  private final Map<LocalDate, List<Pieces>> arriving = new HashMap<>();
  private final Map<LocalDate, List<Pieces>> moving = new HashMap<>();
  private final Map<LocalDate, List<Discard>> discards = new HashMap<>();
  private final Map<LocalDate, List<Feeding>> feedings = new HashMap<>();
  private final List<Replay.Left> leftovers = new ArrayList<>();
  private final List<Replay.Left> pastUseBy = new ArrayList<>();

  /** A freezer and what lies in it now. */
  private static final class Room {
    private final Freezer freezer;
    private final SortedMap<LocalDate, Litres> byDay = new TreeMap<>();
    private long microlitres;

    Room(Freezer freezer) {
      this.freezer = freezer;
    }
  }

  /** A lot and what is left of it now. */
  private static final class Pieces {
    private final Lot lot;
    private Room room;
    private int left;

    Pieces(Lot lot, Room room) {
      this.lot = lot;
      this.room = room;
    }

    void add(int pieces) {
      left += pieces;
      room.microlitres += pieces * lot.item().litres().microlitres();
    }

    void moveInto(Room other) {
      int all = left;
      add(-all);
      room = other;
      add(all);
    }
  }

  DayByDay(World world, Plan plan, Function<Lot, LocalDate> arrives, Consumer<String> breaches) {
    this.world = world;
    this.breaches = breaches;
    planning = world.scenario().planning();
    world.scenario().larder().freezers().forEach(f -> rooms.put(f.name(), new Room(f)));
    for (Lot lot : plan.lots()) {
      Room room = rooms.get(lot.firstFreezer());
      if (room != null && rooms.containsKey(lot.freezer())) {
        comeAndGo(new Pieces(lot, room), arrives.apply(lot));
      }
    }
    plan.discards().forEach(d -> on(discards, d.day()).add(d));
    plan.feedings().forEach(f -> on(feedings, f.day()).add(f));
  }

  private void comeAndGo(Pieces pieces, LocalDate arrives) {
    LocalDate first = planning.from();
    Lot lot = pieces.lot;
    byLot.put(lot.id(), pieces);
    if (lot.isMoved()) {
      on(moving, lot.move().day()).add(pieces);
    }
    on(leaving, lot.useBy().isBefore(first) ? first : lot.useBy().plusDays(1)).add(pieces);
    if (lot.origin() instanceof Lot.InHand) {
      pieces.add(lot.pieces());
    } else if (!lot.useBy().isBefore(arrives)) {
      on(arriving, arrives.isBefore(first) ? first : arrives).add(pieces);
    }
  }

  private static <T> List<T> on(Map<LocalDate, List<T>> byDay, LocalDate day) {
    return byDay.computeIfAbsent(day, d -> new ArrayList<>());
  }

  void run() {
    LocalDate end = planning.to().plusDays(world.scenario().policy().tail().days() + 1L);
    planning.from().datesUntil(end).forEach(this::follow);
  }

  private void follow(LocalDate day) {
    boolean endOfDay = world.scenario().policy().freezerCheck() == Policy.FreezerCheck.END_OF_DAY;
    leaving.getOrDefault(day, List.of()).forEach(this::leave);
    discards.getOrDefault(day, List.of()).forEach(this::throwAway);
    List<Pieces> moved = moving.getOrDefault(day, List.of());
    moved.forEach(
        pieces -> pieces.moveInto(Objects.requireNonNull(rooms.get(pieces.lot.freezer()))));
    List<Pieces> delivery = arriving.getOrDefault(day, List.of());
    delivery.forEach(pieces -> pieces.add(pieces.lot.pieces()));
    boolean comes = !delivery.isEmpty() || !moved.isEmpty();
    boolean checked = comes || day.equals(planning.from()) || isLimitedFrom(day);
    if (!endOfDay) {
      look(day, checked);
    }
    feedings.getOrDefault(day, List.of()).forEach(this::feed);
    if (endOfDay) {
      look(day, checked);
    }
    if (day.equals(planning.to())) {
      byLot.values().stream()
          .filter(pieces -> pieces.left > 0)
          .forEach(pieces -> leftovers.add(new Replay.Left(pieces.lot, pieces.left)));
    }
  }

  private boolean isLimitedFrom(LocalDate day) {
    Period today = new Period(day, day);
    return rooms.values().stream()
        .anyMatch(room -> room.freezer.limitedFrom(today).findAny().isPresent());
  }

  private void leave(Pieces pieces) {
    if (pieces.left > 0) {
      pastUseBy.add(new Replay.Left(pieces.lot, pieces.left));
      pieces.add(-pieces.left);
    }
  }

  private void throwAway(Discard discard) {
    take(discard.lotId(), discard.pieces(), () -> discard.day() + ": thrown away");
  }

  private void feed(Feeding feeding) {
    for (Feeding.Draw draw : feeding.draws()) {
      take(draw.lotId(), draw.pieces(), () -> feeding.day() + ": eaten by " + feeding.mealId());
    }
  }

  private void take(String lotId, int wanted, Supplier<String> what) {
    Pieces pieces = byLot.get(lotId);
    int there = pieces == null ? 0 : pieces.left;
    if (wanted > there) {
      breaches.accept(
          what.get()
              + ": "
              + wanted
              + " pieces of lot "
              + lotId
              + ", of which "
              + there
              + " are there.");
    }
    if (pieces != null) {
      pieces.add(-Math.max(0, Math.min(wanted, there)));
    }
  }

  /** Writes down how full every freezer is, and whether it is too full where it is checked. */
  private void look(LocalDate day, boolean checked) {
    for (Room room : rooms.values()) {
      Litres taken = new Litres(room.microlitres);
      if (planning.contains(day)) {
        room.byDay.put(day, taken);
      }
      if (checked && taken.compareTo(room.freezer.usableOn(day)) > 0) {
        breaches.accept(
            day
                + ": "
                + taken
                + " in freezer "
                + room.freezer.name()
                + ", which holds "
                + room.freezer.usableOn(day)
                + ".");
      }
    }
  }

  List<FreezerLoad> freezers() {
    return rooms.values().stream().map(room -> new FreezerLoad(room.freezer, room.byDay)).toList();
  }

  List<Replay.Left> leftovers() {
    return leftovers;
  }

  List<Replay.Left> pastUseBy() {
    return pastUseBy;
  }
}
