package io.frostlot.program;

import io.frostlot.plan.Pledge;
import java.util.List;

/** How many packs of a {@link Trial} count for each pledge. */
final class PledgeCounts {
  private final List<Pledge> pledges;
  private final Deliveries deliveries;
  private final int[] counts;

  /** Nothing is bought. */
  PledgeCounts(List<Pledge> pledges, Deliveries deliveries) {
    this.pledges = pledges;
    this.deliveries = deliveries;
    counts = new int[pledges.size()];
  }

  /** Packs of a row more, or fewer. */
  void add(int delivery, int row, int packs) {
    Deliveries.Delivery of = deliveries.get(delivery);
    for (int p = 0; p < counts.length; p++) {
      if (pledges.get(p).counts(of.slot(), of.rows().get(row).pack())) {
        counts[p] += packs;
      }
    }
  }

  /** Packs too few and too many. */
  int off() {
    int off = 0;
    for (int p = 0; p < counts.length; p++) {
      off += pledges.get(p).packs().off(counts[p]);
    }
    return off;
  }
}
