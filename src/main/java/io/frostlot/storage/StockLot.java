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
 * @param useBy last usable day
 */
public record StockLot(
    String id, Item item, int pieces, String freezer, LocalDate arrived, LocalDate useBy) {
  public StockLot {
    if (pieces < 1 || useBy.isBefore(arrived)) {
      throw new IllegalArgumentException("lot " + id + ": " + pieces + " pieces, use by " + useBy);
    }
  }

  /** The same lot in another freezer, its use-by as it is. */
  public StockLot in(Freezer other) {
    return new StockLot(id, item, pieces, other.name(), arrived, useBy);
  }
}
