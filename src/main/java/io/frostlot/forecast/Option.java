package io.frostlot.forecast;

import io.frostlot.supply.Item;
import io.frostlot.units.Grams;

/** One way to serve a meal: so many pieces of one item. */
public record Option(Item item, int pieces) {
  public Grams grams() {
    return item.grams().mean().times(pieces);
  }
}
