package io.frostlot.storage;

import io.frostlot.supply.Item;
import java.time.LocalDate;

/**
 * Prey under way: ordered and paid for, never planned again.
 *
 * @param id unique among lots in hand and orders under way
 * @param pieces at least 1
 */
public record PlacedLot(
    String id, Item item, int pieces, LocalDate arrivesEarliest, LocalDate arrivesLatest) {
  public PlacedLot {
    if (pieces < 1 || arrivesLatest.isBefore(arrivesEarliest)) {
      throw new IllegalArgumentException("placed lot " + id + ": " + pieces + " pieces");
    }
  }

  /** The same lot of an item that is known otherwise. */
  public PlacedLot withItem(Item other) {
    return new PlacedLot(id, other, pieces, arrivesEarliest, arrivesLatest);
  }
}
