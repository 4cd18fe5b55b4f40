package io.frostlot.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A mass, exact to the milligram so that windows can be compared without rounding.
 *
 * @param milligrams not negative
 */
public record Grams(long milligrams) implements Comparable<Grams> {
  public static final Grams ZERO = new Grams(0);
  public static final Grams UNLIMITED = new Grams(Long.MAX_VALUE / 1_000_000);

  public Grams {
    if (milligrams < 0) {
      throw new IllegalArgumentException("negative mass: " + milligrams + " mg");
    }
  }

  /** Rounded half-up to the milligram. */
  public static Grams of(BigDecimal grams) {
    return new Grams(grams.movePointRight(3).setScale(0, RoundingMode.HALF_UP).longValueExact());
  }

  public static Grams of(double grams) {
    return new Grams(Math.round(grams * 1000));
  }

  public Grams plus(Grams other) {
    return new Grams(milligrams + other.milligrams);
  }

  public Grams times(long count) {
    return new Grams(Math.multiplyExact(milligrams, count));
  }

  /** This mass times a factor, half-up to the milligram. */
  public Grams times(double factor) {
    return new Grams(Math.round(milligrams * factor));
  }

  public boolean isUnlimited() {
    return equals(UNLIMITED);
  }

  public double toDouble() {
    return milligrams / 1000.0;
  }

  public BigDecimal toDecimal() {
    return BigDecimal.valueOf(milligrams, 3).stripTrailingZeros();
  }

  @Override
  public int compareTo(Grams other) {
    return Long.compare(milligrams, other.milligrams);
  }

  @Override
  public String toString() {
    return toDecimal().toPlainString() + " g";
  }
}
