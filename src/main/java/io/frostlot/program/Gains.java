package io.frostlot.program;

import java.util.HashMap;
import java.util.Map;

/**
 * By how much branching on a column has raised the bound, for each unit by which it was held off
 * its value: pseudo-costs (M. Benichou and others, Experiments in mixed-integer linear programming,
 * Mathematical Programming 1, 1971). A column that was not branched on is thought to bring what
 * others bring on average, the less the later its turn.
 */
final class Gains {
  /** Money: what brings less on one side is told apart by the other. */
  private static final double LEAST = 1e-3;

  /** A turn so late halves what is expected. */
  private static final double HALF = 2;

  private final Side below = new Side();
  private final Side above = new Side();

  /** Of holding columns down, or up. */
  private static final class Side {
    private final Map<String, Mean> means = new HashMap<>();

    void learn(String name, double gain) {
      means.merge(name, new Mean(gain, 1), Mean::and);
    }

    /** The average over columns that were branched on; one where there is none. */
    double usual() {
      return means.values().stream().mapToDouble(Mean::value).average().orElse(1);
    }

    double expected(Counts.Count count, double usual) {
      Mean own = means.get(count.name());
      return own == null ? usual * HALF / (HALF + count.turn()) : own.value();
    }
  }

  private record Mean(double sum, int count) {
    Mean and(Mean other) {
      return new Mean(sum + other.sum, count + other.count);
    }

    double value() {
      return sum / count;
    }
  }

  /**
   * Two nodes were made of one.
   *
   * @param value of the count before
   * @param lower by how much the bound of the node below it is higher than before; likewise above
   */
  void learn(Counts.Count count, double value, double lower, double higher) {
    double part = value - Math.floor(value);
    below.learn(count.name(), lower / part);
    above.learn(count.name(), higher / (1 - part));
  }

  /** How promising each count is at a point: the product of what both nodes may bring. */
  Promise promise() {
    double usualBelow = below.usual();
    double usualAbove = above.usual();
    return (count, value) -> {
      double part = value - Math.floor(value);
      return Math.max(LEAST, part * below.expected(count, usualBelow))
          * Math.max(LEAST, (1 - part) * above.expected(count, usualAbove));
    };
  }

  /** What branching on a count that has a value promises. */
  interface Promise {
    double of(Counts.Count count, double value);
  }
}
