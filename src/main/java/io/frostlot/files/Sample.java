package io.frostlot.files;

import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import java.util.Locale;
import java.util.Optional;

/**
 * Pieces of a bag that the keeper has weighed together, columns sample_pieces and sample_g: how
 * small or large a seller runs.
 */
record Sample(int pieces, Grams grams) {
  /** Sellers' words differ by up to twice (common practice); further off is a slip of the pen. */
  private static final int FURTHEST = 2;

  private static final double NOTABLE = 0.05;

  static Sample of(Row row) {
    return new Sample(row.integer("sample_pieces"), row.grams("sample_g"));
  }

  /** Of one piece; never less than a milligram. */
  private Grams mean() {
    Grams mean = grams.times(1.0 / pieces);
    return mean.milligrams() == 0 ? new Grams(1) : mean;
  }

  /**
   * What is stated, or stands behind the size word, with the mean of the sample, which is no guess.
   * Where that mean does not fit what is stated, or nothing is, the lightest and the heaviest piece
   * are scaled with it. Empty, with a problem added, where it is too far off to be believed.
   */
  Optional<Item.Spread> correct(Row row, Item.Spread claimed) {
    double ratio = mean().toDouble() / claimed.mean().toDouble();
    if (ratio * FURTHEST < 1 || ratio > FURTHEST) {
      row.wrong(
          "sample_g",
          "%d pieces of %s to %s each"
              .formatted(
                  pieces,
                  claimed.mean().times(1.0 / FURTHEST),
                  claimed.mean().times((long) FURTHEST)),
          "Half to twice the middle of what the seller says; otherwise type least_g and most_g.");
      return Optional.empty();
    }
    boolean scaled = claimed.guessed() || !claimed.holds(mean());
    double scale = scaled ? ratio : 1;
    Item.Spread weighed =
        new Item.Spread(claimed.least().times(scale), mean(), claimed.most().times(scale), false);
    if (Math.abs(ratio - 1) >= NOTABLE) {
      row.lookAt(
          "%s runs %s: %s a piece by your sample of %d, %s by what the seller says.%s"
              .formatted(
                  row.textOr("item", "this"),
                  runs(ratio),
                  mean(),
                  pieces,
                  claimed.mean(),
                  scaled ? within(weighed) : ""));
    }
    return Optional.of(weighed);
  }

  private static String within(Item.Spread weighed) {
    return " Pieces of %s to %s are reckoned with; type least_g and most_g if you know better."
        .formatted(weighed.least(), weighed.most());
  }

  private static String runs(double ratio) {
    return String.format(
        Locale.ROOT, "%.0f %% %s", 100 * Math.abs(ratio - 1), ratio < 1 ? "small" : "large");
  }
}
