package io.frostlot.program;

import java.util.function.DoubleSupplier;

/**
 * How a local search cools down.
 *
 * @param warm by how much a change may be for the worse at first, about
 * @param most steps after which it is cold
 * @param timePassed share of the time in which it should be cold, at the latest
 */
record Cooling(double warm, int most, DoubleSupplier timePassed) {
  private static final double COOLED = 0.03;

  private double passed(int steps) {
    return Math.max((double) steps / most, timePassed.getAsDouble());
  }

  /** By how much a change may be for the worse after so many, about. */
  double warmth(int steps) {
    return warm * Math.pow(COOLED, passed(steps));
  }

  /** Is nothing accepted any more that is for the worse? */
  boolean isCold(int steps) {
    return passed(steps) >= 1;
  }
}
