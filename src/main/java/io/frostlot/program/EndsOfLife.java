package io.frostlot.program;

import io.frostlot.plan.Lot;
import io.frostlot.plan.Scenario;
import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Days on which something has just gone past its use-by, or past its best where that is charged.
 */
final class EndsOfLife {
  private final Timeline timeline;
  private final NavigableSet<Integer> days = new TreeSet<>();

  private EndsOfLife(Timeline timeline) {
    this.timeline = timeline;
  }

  /**
   * Those of an item, after the first day.
   *
   * @param slots that bring it
   */
  static NavigableSet<Integer> of(Item item, List<Slot> slots, LotKinds kinds, Timeline timeline) {
    EndsOfLife ends = new EndsOfLife(timeline);
    Scenario.Larder larder = timeline.world().scenario().larder();
    Stream.of(
            slots.stream().flatMap(slot -> kinds.of(item, slot)),
            larder.stock().stream().filter(lot -> lot.item().equals(item)).flatMap(kinds::of),
            larder.placed().stream().filter(lot -> lot.item().equals(item)).flatMap(kinds::of))
        .flatMap(lots -> lots)
        .forEach(ends::add);
    return ends.days.tailSet(timeline.first(), false);
  }

  private void add(Lot lot) {
    days.add(timeline.at(lot.useBy()) + 1);
    if (timeline.isPastBestCharged()) {
      days.add(timeline.at(timeline.world().bestBefore(lot)) + 1);
    }
  }
}
