package io.frostlot.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An exact amount in the scenario's one currency; never rounded unless {@link #rounded} says so.
 *
 * @param amount major units, at most ten decimals, trailing zeros dropped
 */
public record Money(BigDecimal amount) implements Comparable<Money> {
  public static final Money ZERO = new Money(BigDecimal.ZERO);

  public Money {
    amount = amount.stripTrailingZeros();
    if (amount.scale() < 0) {
      amount = amount.setScale(0);
    }
    if (amount.scale() > 10) {
      throw new IllegalArgumentException("money with more than ten decimals: " + amount);
    }
  }

  /** Reads a plain decimal such as {@code "12.50"}; throws NumberFormatException otherwise. */
  public static Money of(String decimal) {
    return new Money(new BigDecimal(decimal));
  }

  public static Money of(long major) {
    return new Money(BigDecimal.valueOf(major));
  }

  public Money plus(Money other) {
    return new Money(amount.add(other.amount));
  }

  public Money minus(Money other) {
    return new Money(amount.subtract(other.amount));
  }

  public Money negated() {
    return new Money(amount.negate());
  }

  public Money times(long count) {
    return new Money(amount.multiply(BigDecimal.valueOf(count)));
  }

  /** The amount times a decimal factor, half-up to the given number of decimals. */
  public Money times(BigDecimal factor, int decimals) {
    return new Money(amount.multiply(factor).setScale(decimals, RoundingMode.HALF_UP));
  }

  /** Half-up to the currency's minor unit. */
  public Money rounded(int decimals) {
    return new Money(amount.setScale(decimals, RoundingMode.HALF_UP));
  }

  public boolean isZero() {
    return amount.signum() == 0;
  }

  public boolean isNegative() {
    return amount.signum() < 0;
  }

  public boolean atLeast(Money other) {
    return compareTo(other) >= 0;
  }

  public double toDouble() {
    return amount.doubleValue();
  }

  /** With at least the given number of decimals; more where the amount has more. */
  public String toText(int decimals) {
    return (amount.scale() < decimals ? amount.setScale(decimals) : amount).toPlainString();
  }

  @Override
  public int compareTo(Money other) {
    return amount.compareTo(other.amount);
  }

  @Override
  public String toString() {
    return amount.toPlainString();
  }
}
