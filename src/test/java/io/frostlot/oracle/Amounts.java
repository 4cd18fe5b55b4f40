package io.frostlot.oracle;

import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.math.BigDecimal;

/** Money as whole millionths of the major unit, exact or refused. */
final class Amounts {
  private static final int DECIMALS = 6;

  private Amounts() {}

  static long of(Money money) {
    return money.amount().movePointRight(DECIMALS).longValueExact();
  }

  static Money money(long amount) {
    return new Money(BigDecimal.valueOf(amount, DECIMALS));
  }

  /** Half-up to the minor unit. */
  static long rounded(long amount, int decimals) {
    return halfUp(amount, unit(DECIMALS - decimals)) * unit(DECIMALS - decimals);
  }

  /** A share of an amount, half-up to the minor unit. */
  static long share(long amount, Percent percent, int decimals) {
    long millionths = percent.value().movePointRight(4).longValueExact();
    long product = Math.multiplyExact(amount, millionths);
    return halfUp(product, unit(2 * DECIMALS - decimals)) * unit(DECIMALS - decimals);
  }

  private static long halfUp(long amount, long unit) {
    return Math.floorDiv(2 * amount + unit, 2 * unit);
  }

  private static long unit(int zeros) {
    long unit = 1;
    for (int i = 0; i < zeros; i++) {
      unit *= 10;
    }
    return unit;
  }
}
