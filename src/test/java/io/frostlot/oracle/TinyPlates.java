package io.frostlot.oracle;

import io.frostlot.keeping.Plate;
import io.frostlot.supply.Item;
import io.frostlot.units.Percent;
import io.frostlot.units.SizeBand;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** What random animals should have on their plates. */
record TinyPlates(Dice dice, List<Item> items) {

  /** Of the 56 meals of eight weeks, 2 % are one. */
  Plate any() {
    TreeMap<String, Percent> shares = new TreeMap<>();
    if (dice.has(Feature.KIND_SHARES)) {
      shares.put(dice.oneOf("mouse", "rat"), Percent.of(dice.oneOf("0", "2", "4")));
    }
    if (dice.has(Feature.NEVER_CHANGES) && dice.oneIn(2)) {
      return new Plate(shares, never());
    }
    if (!dice.has(Feature.SELDOM_CHANGES)) {
      return new Plate(shares, new Plate.Free());
    }
    Set<SizeBand> before = dice.oneIn(2) ? Set.of() : Set.of(size(dice.oneOf(items)));
    return new Plate(
        shares,
        dice.oneIn(2) ? new Plate.Keep(before) : new Plate.Seldom(dice.between(2, 4), before));
  }

  private static SizeBand size(Item item) {
    return SizeBand.of(item.kind(), item.grams().mean());
  }

  /** Keeps to a size that is sold, or to one above or below, or to another kind. */
  Plate.Never never() {
    SizeBand sold = size(dice.oneOf(items));
    return new Plate.Never(
        switch (dice.between(0, 4)) {
          case 0 -> new SizeBand(sold.kind(), sold.doubling() + 1);
          case 1 -> new SizeBand(sold.kind(), sold.doubling() - 1);
          case 2 -> new SizeBand("chick", sold.doubling());
          default -> sold;
        });
  }
}
