package io.frostlot.program;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What falls short in percent is rounded up to a whole percent; a thousandth does not count. So it
 * can be added to what falls short in pieces.
 */
final class WholePercent {
  private static final BigDecimal NOTHING = new BigDecimal("0.001");

  private WholePercent() {}

  /** Puts to the solver that an amount in percent, where it is above zero, falls short. */
  static void impose(String rule, Linear percent, Model model) {
    Var whole = model.follows(0, Model.INFINITY);
    model.atMost(rule, percent.plus(-NOTHING.doubleValue()).plus(-1, whole), 0);
    model.minimise(Level.SHORTFALL, Linear.of(whole));
  }

  /** The same of a finished plan. */
  static long of(BigDecimal percent) {
    return percent
        .subtract(NOTHING)
        .setScale(0, RoundingMode.CEILING)
        .max(BigDecimal.ZERO)
        .longValueExact();
  }

  /** The same in plain numbers, for searching. */
  static long of(double percent) {
    return (long) Math.max(0, Math.ceil(percent - NOTHING.doubleValue()));
  }
}
