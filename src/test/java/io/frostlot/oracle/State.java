package io.frostlot.oracle;

import java.util.Arrays;

/**
 * A tiny world at one moment, as far as what can still happen depends on it.
 *
 * @param counts meals served by demand, then what is used up of limits over all orders
 * @param cells what lies in the freezers
 * @param recent pieces that came not long ago, by item and latest arrival
 * @param delivered has something come, or been carried, today?
 * @param ordered did some of that come from a planned order?
 */
record State(int[] counts, Cells cells, Cells recent, boolean delivered, boolean ordered) {
  State with(Cells now) {
    return new State(counts, now, recent, delivered, ordered);
  }

  /** The freezers are looked at today. */
  State checked() {
    return new State(counts, cells, recent, true, ordered);
  }

  State withCount(int index, int count) {
    if (counts[index] == count) {
      return this;
    }
    int[] changed = counts.clone();
    changed[index] = count;
    return new State(changed, cells, recent, delivered, ordered);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof State o
        && delivered == o.delivered
        && ordered == o.ordered
        && Arrays.equals(counts, o.counts)
        && cells.equals(o.cells)
        && recent.equals(o.recent);
  }

  @Override
  public int hashCode() {
    int hash = 31 * Arrays.hashCode(counts) + cells.hashCode();
    hash = 31 * hash + recent.hashCode();
    hash = 4 * hash + (delivered ? 1 : 0) + (ordered ? 2 : 0);
    return hash ^ hash >>> 15;
  }
}
