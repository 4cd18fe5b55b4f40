package io.frostlot.supply;

import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.util.List;
import java.util.stream.Stream;

/**
 * One row of a price sheet: a count of pieces of an item at a price.
 *
 * @param pieces at least 1
 * @param price regular price of one pack, in the minor unit or finer
 * @param available how many can be had
 * @param packed room and mass in a shipping box
 * @param sorted do its pieces come apart into a lighter and a heavier half?
 */
public record Pack(
    Item item, int pieces, Money price, Availability available, Packed packed, boolean sorted) {
  public static final int UNLIMITED = Integer.MAX_VALUE;

  /** As it is sold. */
  public Pack(Item item, int pieces, Money price, Availability available, Packed packed) {
    this(item, pieces, price, available, packed, false);
  }

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
    return new Pack(other, pieces, price, available, packed, sorted);
  }

  public Pack withPrice(Money other) {
    return new Pack(item, pieces, other, available, packed, sorted);
  }

  public Pack withAvailable(Availability other) {
    return new Pack(item, pieces, price, other, packed, sorted);
  }

  /** The same sorted by weight at home, where there is something to sort. */
  public Pack sortedAtHome() {
    boolean some = pieces > 1 && item.grams().isSortable();
    return new Pack(item, pieces, price, available, packed, some);
  }

  /** Room that all its pieces take in freezers. */
  public Litres room() {
    return new Litres(
        parts().stream()
            .mapToLong(part -> part.pieces() * part.item().litres().microlitres())
            .sum());
  }

  /** The same with all its pieces taken one for another. */
  public Pack unsorted() {
    return new Pack(item, pieces, price, available, packed, false);
  }

  /** Pieces that may be eaten one for another. */
  public record Part(Item item, int pieces) {}

  /**
   * What it holds once it is at home: all its pieces, or of n sorted ones the lighter n / 2,
   * rounded down, and the heavier others (see {@link Item.Spread}).
   */
  public List<Part> parts() {
    return sorted
        ? List.of(
            new Part(item.half(false), pieces / 2), new Part(item.half(true), pieces - pieces / 2))
        : List.of(new Part(item, pieces));
  }

  /** Its pieces of an item. */
  public int piecesOf(Item some) {
    return parts().stream().filter(part -> part.item().equals(some)).mapToInt(Part::pieces).sum();
  }

  /** The items that it holds. */
  public Stream<Item> items() {
    return parts().stream().map(Part::item);
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
