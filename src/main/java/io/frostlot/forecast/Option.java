package io.frostlot.forecast;

import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import io.frostlot.units.SizeBand;

/** One way to serve a meal: so many pieces of one item. */
public record Option(Item item, int pieces) {
  public Grams grams() {
    return item.grams().mean().times(pieces);
  }

  /** Kind and size of each piece. */
  public SizeBand band() {
    return item.band();
  }
}
