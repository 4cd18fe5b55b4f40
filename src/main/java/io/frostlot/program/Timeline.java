package io.frostlot.program;

import io.frostlot.plan.Joint;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.storage.PlacedLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Where time must be broken, item by item: the program looks at stock only where something about
 * the item can change, which loses nothing.
 *
 * <p>An <em>interval</em> starts where pieces of the item can come, be moved, or go past their
 * use-by, or are no longer wanted for safety: within one, stock falls by meals only. A
 * <em>segment</em> is a part of an interval that the freezer check or the safety cover tells apart:
 * meals within one segment are interchangeable, but for the nights that they spare.
 */
final class Timeline {
  private final World world;
  private final Map<String, ItemDays> byItem = new HashMap<>();
  private final LotKinds kinds;
  private final int[] checkDays;
  private final int first;
  private final int last;
  private final Grain grain;
  private final Reserves reserves;

  /**
   * The timeline of a world.
   *
   * @param grain how finely time is looked at
   */
  Timeline(World world, Grain grain) {
    this.world = world;
    this.grain = grain;
    reserves = new Reserves(world);
    first = day(world.scenario().planning().from());
    last = at(date(lastDay(world)));
    kinds = new LotKinds(world);
    checkDays = findCheckDays();
    Map<String, List<Slot>> slots = slotsByItem(world);
    for (Item item : world.items().values()) {
      byItem.put(item.id(), itemDays(item, slots.getOrDefault(item.id(), List.of())));
    }
  }

  World world() {
    return world;
  }

  /** Days since the epoch. */
  static int day(LocalDate date) {
    return (int) date.toEpochDay();
  }

  static LocalDate date(int day) {
    return LocalDate.ofEpochDay(day);
  }

  /** The last day of the planning, or of the tail where there is one, since the epoch. */
  static int lastDay(World world) {
    return day(world.scenario().planning().to()) + world.scenario().policy().tail().days();
  }

  /** The number of the day, or of the longer step that holds it; the first day keeps its number. */
  int at(LocalDate date) {
    return first + Math.floorDiv(day(date) - first, grain.step());
  }

  /** Since the epoch, the first of the days that are taken for one. */
  int firstDayOf(int day) {
    return first + (day - first) * grain.step();
  }

  /** Planning nights from a day on. */
  int nightsFrom(int day) {
    return Math.max(0, day(world.scenario().planning().to()) + 1 - day);
  }

  /** Planning nights that a meal on a day of a segment spares, where a night is charged; else 0. */
  int sparedNights(LocalDate day, Period segment) {
    return isHoldingCharged() ? nightsFrom(day(grain.nightsTogether() ? segment.from() : day)) : 0;
  }

  /** Is a piece that is past its best before told apart from others? */
  boolean isPastBestCharged() {
    return !world.scenario().policy().charges().pastBest().isZero();
  }

  boolean isHoldingCharged() {
    return !world.scenario().policy().charges().holding().isZero();
  }

  Grain grain() {
    return grain;
  }

  /** Is time looked at on all days on which anything can change? */
  boolean isExact() {
    return grain.isExact();
  }

  /** Days of cover asked for; none where time is not looked at finely. */
  int coverDays() {
    return !isExact() ? 0 : world.scenario().policy().safety().coverDays();
  }

  private boolean hasMargin() {
    return !world.scenario().policy().safety().margin().isZero();
  }

  /** What animals that must eat need in a second freezer. */
  Reserves reserves() {
    return reserves;
  }

  /** May something be kept that is never eaten? */
  boolean keepsForSafety() {
    return coverDays() > 0 || (isExact() && (hasMargin() || reserves.days() > 0));
  }

  private int[] findCheckDays() {
    TreeSet<Integer> days = new TreeSet<>();
    days.add(first);
    for (Slot slot : world.slots()) {
      days.add(at(slot.arrivesEarliest()));
      comings(slot).forEach(coming -> days.add(at(coming.earliest())));
    }
    world.scenario().larder().placed().forEach(p -> days.add(at(p.arrivesEarliest())));
    Period all = new Period(date(first), date(lastDay(world)));
    world
        .scenario()
        .larder()
        .freezers()
        .forEach(freezer -> freezer.limitedFrom(all).forEach(day -> days.add(at(day))));
    kinds.moving().days().forEach(day -> days.add(at(day)));
    return days.stream().mapToInt(d -> d).toArray();
  }

  private Stream<Joint.Coming> comings(Slot slot) {
    return world.scenario().larder().freezers().stream()
        .flatMap(freezer -> world.joint().comings(slot, freezer).stream())
        .distinct();
  }

  private static Map<String, List<Slot>> slotsByItem(World world) {
    Map<String, List<Slot>> byItem = new HashMap<>();
    for (Slot slot : world.slots()) {
      world.supplier(slot.supplier()).sheet().packs().stream()
          .flatMap(Pack::items)
          .map(Item::id)
          .distinct()
          .forEach(id -> byItem.computeIfAbsent(id, k -> new ArrayList<>()).add(slot));
    }
    return byItem;
  }

  private ItemDays itemDays(Item item, List<Slot> slots) {
    List<Period> arrivals = new ArrayList<>();
    slots.forEach(slot -> arrivals.add(new Period(slot.arrivesEarliest(), slot.arrivesLatest())));
    slots.stream()
        .flatMap(this::comings)
        .forEach(coming -> arrivals.add(new Period(coming.earliest(), coming.latest())));
    for (PlacedLot placed : world.scenario().larder().placed()) {
      if (placed.item().equals(item)) {
        arrivals.add(new Period(placed.arrivesEarliest(), placed.arrivesLatest()));
      }
    }
    TreeSet<Integer> intervals = new TreeSet<>(List.of(first));
    arrivals.forEach(arrival -> intervals.add(at(arrival.to())));
    kinds.moving().days().forEach(day -> intervals.add(at(day)));
    for (int end : EndsOfLife.of(item, slots, kinds, this)) {
      int slack = end > at(world.scenario().planning().to()) ? grain.tailSlack() : grain.slack();
      if (end - intervals.floor(end) > slack) {
        intervals.add(end);
      }
    }
    intervals.addAll(EndsOfSafety.of(item, arrivals, this));
    TreeSet<Integer> segments = new TreeSet<>(intervals);
    addSegments(segments, arrivals);
    return new ItemDays(within(intervals), within(segments), last);
  }

  /** A date of pieces of an item, put off to the end of its interval where there is slack. */
  int putOff(Item item, LocalDate date) {
    int day = at(date);
    if (grain.slack() == 0 || day < first || day >= last) {
      return day;
    }
    return of(item).intervalEnd(of(item).interval(day));
  }

  private void addSegments(NavigableSet<Integer> segments, List<Period> arrivals) {
    if (grain.slack() > 0) {
      return;
    }
    Policy policy = world.scenario().policy();
    int shift =
        grain.takesDaysTogether() || policy.freezerCheck() == Policy.FreezerCheck.END_OF_DAY
            ? 1
            : 0;
    for (int check : checkDays) {
      segments.add(check + shift);
    }
    for (Period arrival : arrivals) {
      for (int d = 1; d <= coverDays(); d++) {
        segments.add(day(arrival.to()) + d);
      }
    }
  }

  private int[] within(NavigableSet<Integer> days) {
    return days.subSet(first, true, last, true).stream().mapToInt(d -> d).toArray();
  }

  ItemDays of(Item item) {
    return byItem.get(item.id());
  }

  /** What pieces may become. */
  LotKinds lotKinds() {
    return kinds;
  }

  /** Days with a freezer check, in order. */
  int[] checkDays() {
    return checkDays;
  }

  /** The first planning day. */
  int first() {
    return first;
  }

  /** The last day of the planning, or of the tail where there is one. */
  int last() {
    return last;
  }
}
