package io.frostlot.units;

import java.math.BigDecimal;

/**
 * What counts as one size of prey: pieces of one kind whose mean grams lie between two powers of
 * two.
 *
 * @param doubling the power of two that is not above the grams
 */
public record SizeBand(String kind, int doubling) {
  public static SizeBand of(String kind, Grams mean) {
    return new SizeBand(kind, Math.getExponent(mean.toDouble()));
  }

  /** Such as "mouse of 16 to 32 g". */
  public String inWords() {
    return kind + " of " + grams(doubling) + " to " + grams(doubling + 1) + " g";
  }

  private static String grams(int power) {
    return BigDecimal.valueOf(Math.scalb(1.0, power)).stripTrailingZeros().toPlainString();
  }
}
