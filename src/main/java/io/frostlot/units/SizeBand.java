package io.frostlot.units;

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
}
