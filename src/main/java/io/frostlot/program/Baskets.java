package io.frostlot.program;

import java.util.BitSet;

/** Packs that each delivery brings in a {@link Trial}, and what they cost. */
final class Baskets {
  private final Deliveries deliveries;
  private final PledgeCounts pledged;
  private final int[][] packs;
  private final int[] counts;
  private final BitSet open = new BitSet();
  private final double[] costs;
  private final OverBudget budget;
  private final BusyDays days;

  /** Nothing is bought. */
  Baskets(Deliveries deliveries) {
    this.deliveries = deliveries;
    pledged = deliveries.pledged();
    packs = deliveries.all().stream().map(it -> new int[it.most().length]).toArray(int[][]::new);
    counts = new int[packs.length];
    costs = new double[packs.length];
    budget = deliveries.budget();
    days = deliveries.busyDays();
  }

  /** Of each row. */
  int[] packs(int delivery) {
    return packs[delivery].clone();
  }

  int packs(int delivery, int row) {
    return packs[delivery][row];
  }

  /** Deliveries that bring something. */
  BitSet open() {
    return open;
  }

  boolean isOpen(int delivery) {
    return open.get(delivery);
  }

  /** Packs too few and too many for what is pledged. */
  int offPledged() {
    return pledged.off();
  }

  /** Packs more, or fewer. */
  void bring(int delivery, int row, int count) {
    packs[delivery][row] += count;
    counts[delivery] += count;
    open.set(delivery, counts[delivery] > 0);
    pledged.add(delivery, row, count);
  }

  /** What a delivery costed when it was looked at last. */
  double cost(int delivery) {
    return costs[delivery];
  }

  /** It costs so much now; returns by how much all is dearer, with what its day is reckoned at. */
  double keepCost(int delivery, double cost) {
    double before = costs[delivery];
    budget.change(delivery, invoice(before), invoice(cost));
    costs[delivery] = cost;
    int more = (cost > 0 ? 1 : 0) - (before > 0 ? 1 : 0);
    return cost - before + (more == 0 ? 0 : days.change(delivery, more));
  }

  private double invoice(double cost) {
    return cost > 0 ? cost - deliveries.effort() : 0;
  }

  /** Whole percent by which orders pass the budget. */
  long overBudget() {
    return budget.over();
  }

  /** What it costs now; infinite where it cannot be had so. */
  double costNow(int delivery) {
    return deliveries.cost(delivery, packs[delivery]);
  }
}
