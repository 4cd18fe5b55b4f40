package io.frostlot.supply;

import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Period;

/**
 * One row of a price sheet: a count of pieces of an item at a price.
 *
 * @param pieces at least 1
 * @param price regular price of one pack, in the minor unit or finer
 * @param available how many can be had
 * @param packed room and mass in a shipping box
 */
public record Pack(Item item, int pieces, Money price, Availability available, Packed packed) {
  public static final int UNLIMITED = Integer.MAX_VALUE;

  public Pack {
    if (pieces < 1 || price.isNegative()) {
      throw new IllegalArgumentException("pack of " + pieces + " at " + price);
    }
  }

  /** Unique within a supplier: item name and count. */
  public String id() {
    return item.name() + " x" + pieces;
  }

  public Pack withItem(Item other) {
    return new Pack(other, pieces, price, available, packed);
  }

  public Pack withAvailable(Availability other) {
    return new Pack(item, pieces, price, other, packed);
  }

  /**
   * How many packs can be had.
   *
   * @param perDelivery in one delivery
   * @param inTotal over all orders dated within {@code window}
   */
  public record Availability(int perDelivery, int inTotal, Period window) {
    public static final Availability ANY = new Availability(UNLIMITED, UNLIMITED, Period.ALWAYS);
  }

  /** What one pack takes of a shipping box. */
  public record Packed(Grams grams, Litres litres) {}
}
