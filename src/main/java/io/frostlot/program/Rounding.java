package io.frostlot.program;

import io.frostlot.units.Percent;
import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * Rounding half-up to the minor unit as rows of the program, exact for a decimal percentage of
 * values in whole minor units, or in parts of them with at most four decimals of the major unit.
 *
 * <p>A percentage with d decimals of a whole number of minor units is a multiple of 10^-(d+2) minor
 * units; half of that separates "one half" from what is next to it, so r in [x - 1/2 + e, x + 1/2]
 * with e half of it has exactly one whole solution, the one that half-up gives.
 */
final class Rounding {
  private static final int MOST_DECIMALS = 4;
  private static final double LEAST_STEP = 1e-6;
  private final Program program;
  private final int decimals;
  private final double unit;

  Rounding(Program program, int decimals) {
    this.program = program;
    this.decimals = decimals;
    unit = Math.pow(10, -decimals);
  }

  /** Whole minor units, in major units of money, of a percentage of an expression. */
  Linear percentOf(Percent percent, Linear value, String rule) {
    double factor = percent.fraction().doubleValue();
    int parts = isWhole(value) ? 0 : Math.max(0, MOST_DECIMALS - decimals);
    double step =
        Math.max(LEAST_STEP, Math.pow(10, -Math.max(0, percent.fraction().scale()) - parts) / 2);
    double most = Math.ceil(program.most(value) * Math.abs(factor) / unit) + 1;
    Var units = program.model().follows(0, most);
    Linear off = new Linear().plus(factor / unit, value).plus(-1, units);
    program.model().row(rule, -0.5, off, 0.5 - Math.min(step, 0.25));
    return new Linear().plus(unit, units);
  }

  /** Does the value consist of whole minor units? */
  private boolean isWhole(Linear value) {
    return DoubleStream.concat(
            Arrays.stream(value.terms().coefficients()), DoubleStream.of(value.constant()))
        .map(amount -> amount / unit)
        .allMatch(units -> Math.abs(units - Math.rint(units)) < LEAST_STEP);
  }
}
