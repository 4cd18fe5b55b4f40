package io.frostlot.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A volume, exact to the millionth of a litre so that many small pieces add up exactly.
 *
 * @param microlitres not negative
 */
public record Litres(long microlitres) implements Comparable<Litres> {
  public static final Litres ZERO = new Litres(0);

  /** Bulk density of bagged frozen prey, common practice. */
  public static final double PREY_KG_PER_LITRE = 0.45;

  public static final Litres UNLIMITED = new Litres(Long.MAX_VALUE / 1_000_000);

  public Litres {
    if (microlitres < 0) {
      throw new IllegalArgumentException("negative volume: " + microlitres + " ul");
    }
  }

  /** Rounded half-up to the microlitre. */
  public static Litres of(BigDecimal litres) {
    return new Litres(litres.movePointRight(6).setScale(0, RoundingMode.HALF_UP).longValueExact());
  }

  /**
   * Room that frozen prey takes by its mass: mean grams / 450 (0.45 kg per litre, common practice),
   * rounded to the microlitre.
   */
  public static Litres ofPrey(Grams mean) {
    return ofPrey(mean, PREY_KG_PER_LITRE);
  }

  /** Room that frozen prey takes by its mass at the keeper's own bulk density. */
  public static Litres ofPrey(Grams mean, double kgPerLitre) {
    return new Litres(Math.round(mean.milligrams() / kgPerLitre));
  }

  public Litres plus(Litres other) {
    return new Litres(microlitres + other.microlitres);
  }

  public Litres times(long count) {
    return new Litres(Math.multiplyExact(microlitres, count));
  }

  public boolean isUnlimited() {
    return equals(UNLIMITED);
  }

  public double toDouble() {
    return microlitres / 1e6;
  }

  public BigDecimal toDecimal() {
    return BigDecimal.valueOf(microlitres, 6).stripTrailingZeros();
  }

  @Override
  public int compareTo(Litres other) {
    return Long.compare(microlitres, other.microlitres);
  }

  @Override
  public String toString() {
    return toDecimal().toPlainString() + " l";
  }
}
