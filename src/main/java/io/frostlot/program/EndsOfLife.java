package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.units.Period;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Days on which something has just gone past its use-by, or past its best where that is charged.
 */
final class EndsOfLife {
  private final Timeline timeline;
  private final NavigableSet<Integer> days = new TreeSet<>();

  private EndsOfLife(Timeline timeline) {
    this.timeline = timeline;
  }

  /** Those of an item, after the first day. */
  static NavigableSet<Integer> of(Item item, List<Period> arrivals, Timeline timeline) {
    EndsOfLife ends = new EndsOfLife(timeline);
    World world = timeline.world();
    for (Freezer freezer : world.scenario().larder().freezers()) {
      arrivals.forEach(arrival -> ends.add(freezer.keeps(item, arrival.from())));
    }
    for (StockLot lot : world.scenario().larder().stock()) {
      if (lot.item().equals(item)) {
        ends.add(lot.keeps());
      }
    }
    return ends.days.tailSet(timeline.first(), false);
  }

  private void add(Keeps keeps) {
    days.add(timeline.at(keeps.useBy()) + 1);
    if (timeline.isPastBestCharged()) {
      days.add(timeline.at(keeps.bestBefore()) + 1);
    }
  }
}
