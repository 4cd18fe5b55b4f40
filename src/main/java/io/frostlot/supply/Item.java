package io.frostlot.supply;

import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.SizeBand;

/**
 * Prey of one source under one name; all its pieces are interchangeable.
 *
 * @param id "supplier/name", or "stock/lot" for prey in hand that no chosen supplier sells
 * @param name as on the price sheet
 * @param kind mouse, rat, chick ...
 * @param sizeWord the seller's word, shown and never compared
 * @param grams of one piece
 * @param litres room of one piece in a freezer
 */
public record Item(
    String id, String name, String kind, String sizeWord, Spread grams, Litres litres) {

  /** Kind and size of a piece. */
  public SizeBand band() {
    return SizeBand.of(kind, grams.mean());
  }

  /**
   * Grams of one piece.
   *
   * @param guessed the spread is the band of the size word, neither stated by the seller nor scaled
   *     to pieces that were weighed
   */
  public record Spread(Grams least, Grams mean, Grams most, boolean guessed) {
    public Spread {
      if (least.compareTo(mean) > 0 || mean.compareTo(most) > 0 || mean.milligrams() == 0) {
        throw new IllegalArgumentException(
            "spread out of order: " + least + ", " + mean + ", " + most);
      }
    }

    /** Could a piece weigh that much? */
    public boolean holds(Grams grams) {
      return least.compareTo(grams) <= 0 && grams.compareTo(most) <= 0;
    }

    /** Can its pieces be told apart by weighing? */
    public boolean isSortable() {
      return least.compareTo(most) < 0;
    }

    /**
     * One half of a bag sorted at its mean: with d half of the smaller of mean - least and most -
     * mean, the lighter half lies from least to mean and weighs mean - d a piece, the heavier half
     * from mean to most and mean + d.
     */
    Spread half(boolean heavier) {
      long middle = mean.milligrams();
      long d = Math.min(middle - least.milligrams(), most.milligrams() - middle) / 2;
      return heavier
          ? new Spread(mean, new Grams(middle + d), most, guessed)
          : new Spread(least, new Grams(middle - d), mean, guessed);
    }

    /** The same where pieces weigh otherwise in the mean, within the same limits. */
    public Spread withMean(Grams other) {
      return new Spread(least, other, most, guessed);
    }

    public static Spread exactly(Grams grams) {
      return new Spread(grams, grams, grams, false);
    }
  }

  /** The same where pieces weigh otherwise; they take the same room. */
  public Item weighing(Spread other) {
    return new Item(id, name, kind, sizeWord, other, litres);
  }

  /** The pieces of one half of its bags, sorted by weight; they take room by their grams. */
  Item half(boolean heavier) {
    String half = heavier ? ", heavier half" : ", lighter half";
    Spread spread = grams.half(heavier);
    double share = spread.mean().toDouble() / grams.mean().toDouble();
    return new Item(
        id + half,
        name + half,
        kind,
        sizeWord,
        spread,
        new Litres((long) Math.ceil(litres.microlitres() * share)));
  }
}
