package io.frostlot.sharing;

import java.util.ArrayList;
import java.util.List;

/** What some rows of numbers add up to in any multiples, kept by elimination. */
final class Span {
  private static final double ZERO = 1e-9;
  private final int dimension;
  private final List<double[]> rows = new ArrayList<>();

  Span(int dimension) {
    this.dimension = dimension;
  }

  boolean isFull() {
    return rows.size() == dimension;
  }

  void add(double[] row) {
    double[] rest = rest(row);
    int lead = lead(rest);
    if (lead < dimension) {
      for (int i = dimension - 1; i >= lead; i--) {
        rest[i] /= rest[lead];
      }
      rows.add(rest);
    }
  }

  boolean holds(double[] row) {
    return lead(rest(row)) == dimension;
  }

  private double[] rest(double[] row) {
    double[] rest = row.clone();
    for (double[] known : rows) {
      double factor = rest[lead(known)];
      for (int i = 0; i < dimension; i++) {
        rest[i] -= factor * known[i];
      }
    }
    return rest;
  }

  private int lead(double[] row) {
    int lead = 0;
    while (lead < dimension && Math.abs(row[lead]) < ZERO) {
      lead++;
    }
    return lead;
  }
}
