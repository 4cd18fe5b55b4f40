package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.units.Period;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Days from which something that is kept for safety only is asked for no more, or on which room may
 * be too short for it: at their start it may go.
 */
final class EndsOfSafety {
  private EndsOfSafety() {}

  /** Those of an item; none where time is not looked at finely. */
  static NavigableSet<Integer> of(Item item, List<Period> arrivals, Timeline timeline) {
    TreeSet<Integer> days = new TreeSet<>();
    if (!timeline.isExact()) {
      return days;
    }
    World world = timeline.world();
    int[] checkDays = timeline.checkDays();
    for (Period arrival : timeline.coverDays() == 0 ? List.<Period>of() : arrivals) {
      int from = Timeline.day(arrival.to());
      int to = from + timeline.coverDays();
      days.add(to);
      Arrays.stream(checkDays).filter(day -> day > from && day < to).forEach(days::add);
    }
    if (!world.scenario().policy().safety().margin().isZero()) {
      Arrays.stream(checkDays).forEach(days::add);
      world.slots().forEach(slot -> days.add(timeline.at(slot.arrivesLatest())));
      world.scenario().larder().placed().forEach(lot -> days.add(timeline.at(lot.arrivesLatest())));
    }
    Reserves reserves = timeline.reserves();
    if (reserves.concern(item)) {
      reserves.nights().forEach(night -> days.add(Timeline.day(night) + 1));
    }
    return days;
  }
}
