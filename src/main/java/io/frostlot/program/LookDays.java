package io.frostlot.program;

import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.supply.Slot;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;

/**
 * Days on which freezers and what is kept for safety are looked at; all days are counted from the
 * first planning day.
 *
 * @param first the first planning day
 * @param days of the planning and of the tail
 * @param lastPlanned last planning day
 * @param checks days on which a freezer may be fullest, in order
 * @param afterMeals are freezers looked at after the meals?
 * @param comings days after the first on which something may come, of the planning, in order
 * @param coverDays pieces should have come so many days before they are eaten
 */
record LookDays(
    LocalDate first,
    int days,
    int lastPlanned,
    int[] checks,
    boolean afterMeals,
    int[] comings,
    int coverDays) {

  /** Of all deliveries of a world. */
  static LookDays of(World world) {
    LocalDate first = world.scenario().planning().from();
    int last = Timeline.lastDay(world) - Timeline.day(first);
    int lastPlanned = day(first, world.scenario().planning().to());
    TreeSet<Integer> checks = new TreeSet<>(Set.of(0));
    TreeSet<Integer> comings = new TreeSet<>();
    for (Slot slot : world.slots()) {
      checks.add(day(first, slot.arrivesEarliest()));
      comings.add(day(first, slot.arrivesLatest()));
    }
    for (PlacedLot lot : world.scenario().larder().placed()) {
      checks.add(day(first, lot.arrivesEarliest()));
      comings.add(day(first, lot.arrivesLatest()));
    }
    Period all = new Period(first, first.plusDays(last));
    for (Freezer freezer : world.scenario().larder().freezers()) {
      freezer.limitedFrom(all).forEach(day -> checks.add(day(first, day)));
    }
    world.joint().collecting().days().stream()
        .map(date -> day(first, date))
        .filter(day -> day <= last)
        .forEach(checks::add);
    return new LookDays(
        first,
        last + 1,
        lastPlanned,
        numbers(checks.tailSet(0)),
        world.scenario().policy().freezerCheck() == Policy.FreezerCheck.END_OF_DAY,
        numbers(comings.subSet(1, lastPlanned + 1)),
        world.scenario().policy().safety().coverDays());
  }

  private static int[] numbers(Set<Integer> days) {
    return days.stream().mapToInt(day -> day).toArray();
  }

  private static int day(LocalDate first, LocalDate date) {
    return Timeline.day(date) - Timeline.day(first);
  }

  /** The number of a day. */
  int day(LocalDate date) {
    return day(first, date);
  }

  LocalDate date(int day) {
    return first.plusDays(day);
  }

  /** The place of a day among those of checks; negative where it is none. */
  int check(LocalDate date) {
    return Arrays.binarySearch(checks, day(date));
  }

  /** The place of a day among those on which something may come; negative where it is none. */
  int coming(LocalDate date) {
    return Arrays.binarySearch(comings, day(date));
  }
}
