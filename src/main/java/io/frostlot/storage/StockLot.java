package io.frostlot.storage;

import io.frostlot.supply.Item;
import java.time.LocalDate;

/**
 * Prey in hand on the first planning day.
 *
 * @param id unique among lots in hand and orders under way
 * @param pieces at least 1
 * @param freezer name of the freezer it lies in
 * @param arrived day it came, not after the first planning day
 * @param keeps until when it is at its best, and usable
 */
public record StockLot(
    String id, Item item, int pieces, String freezer, LocalDate arrived, Keeps keeps) {
  public StockLot {
    if (pieces < 1 || keeps.useBy().isBefore(arrived)) {
      throw new IllegalArgumentException("lot " + id + ": " + pieces + " pieces, " + keeps);
    }
  }

  /** At its best until it is past its use-by. */
  public StockLot(
      String id, Item item, int pieces, String freezer, LocalDate arrived, LocalDate useBy) {
    this(id, item, pieces, freezer, arrived, Keeps.until(useBy));
  }

  /** Last usable day. */
  public LocalDate useBy() {
    return keeps.useBy();
  }

  /** The same lot of an item that is known otherwise. */
  public StockLot withItem(Item other) {
    return new StockLot(id, other, pieces, freezer, arrived, keeps);
  }

  /** The same lot with other dates. */
  public StockLot kept(Keeps other) {
    return new StockLot(id, item, pieces, freezer, arrived, other);
  }

  /** The same lot in another freezer, its dates as they are. */
  public StockLot in(Freezer other) {
    return new StockLot(id, item, pieces, other.name(), arrived, keeps);
  }
}
