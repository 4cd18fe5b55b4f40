package io.frostlot.program;

import io.frostlot.supply.Item;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** In which segments some piece of an item may be there to be eaten. */
final class Presence implements DemandClasses.Possible {
  private final Timeline timeline;
  private final BiFunction<String, Item, List<Flow>> flows;
  private final Map<Table, BitSet> segments = new HashMap<>();

  private record Table(String keeper, Item item) {}

  /**
   * Of what lies in a keeper's freezers.
   *
   * @param flows by keeper and item
   */
  Presence(Timeline timeline, BiFunction<String, Item, List<Flow>> flows) {
    this.timeline = timeline;
    this.flows = flows;
  }

  @Override
  public boolean test(String keeper, Item item, int segment) {
    return segments.computeIfAbsent(new Table(keeper, item), this::covered).get(segment);
  }

  private BitSet covered(Table table) {
    BitSet covered = new BitSet();
    int[] starts = timeline.of(table.item()).segments();
    for (Flow flow : flows.apply(table.keeper(), table.item())) {
      for (Flow.Part part : flow.parts()) {
        for (int s = 0; s < starts.length; s++) {
          if (part.coversDays(starts[s], starts[s])) {
            covered.set(s);
          }
        }
      }
    }
    return covered;
  }
}
