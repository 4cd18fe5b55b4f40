package io.frostlot.units;

import java.math.BigDecimal;

/**
 * A share in hundredths, exact.
 *
 * @param value 12.5 means 12.5 %
 */
public record Percent(BigDecimal value) implements Comparable<Percent> {
  public static final Percent ZERO = new Percent(BigDecimal.ZERO);

  public Percent {
    value = value.stripTrailingZeros();
  }

  public static Percent of(String decimal) {
    return new Percent(new BigDecimal(decimal));
  }

  /** The factor: 0.125 for 12.5 %. */
  public BigDecimal fraction() {
    return value.movePointLeft(2);
  }

  /** The factor that is left after taking this share off: 0.875 for 12.5 %. */
  public BigDecimal complement() {
    return BigDecimal.ONE.subtract(fraction());
  }

  public boolean isZero() {
    return value.signum() == 0;
  }

  @Override
  public int compareTo(Percent other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value.toPlainString() + " %";
  }
}
