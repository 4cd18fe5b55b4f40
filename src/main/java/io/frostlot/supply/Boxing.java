package io.frostlot.supply;

import io.frostlot.units.Grams;
import io.frostlot.units.Litres;

/**
 * How an order is put into boxes.
 *
 * @param way by the order's totals, or pack by pack
 * @param limits of one box
 * @param mostBoxes per order
 */
public record Boxing(Way way, Limits limits, int mostBoxes) {
  public static final Boxing NONE = new Boxing(Way.BY_TOTAL, Limits.NONE, 1);

  public Boxing {
    if (mostBoxes < 1) {
      throw new IllegalArgumentException("at most " + mostBoxes + " boxes");
    }
  }

  /** How boxes are counted. */
  public enum Way {
    /** Total over limit, rounded up; the largest over all limits. */
    BY_TOTAL,
    /** A pack is never cut across boxes. */
    WHOLE_PACKS
  }

  /** Limits of one box, all at once; UNLIMITED where one is not stated. */
  public record Limits(Grams grams, Litres litres, int pieces) {
    public static final Limits NONE = new Limits(Grams.UNLIMITED, Litres.UNLIMITED, Pack.UNLIMITED);

    public Limits {
      if (grams.milligrams() == 0 || litres.microlitres() == 0 || pieces < 1) {
        throw new IllegalArgumentException("a box must hold something");
      }
    }
  }
}
