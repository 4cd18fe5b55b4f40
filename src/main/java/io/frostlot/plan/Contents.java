package io.frostlot.plan;

import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.List;

/**
 * What lies in a freezer on a day, after the delivery and before the meals: what is lost where it
 * fails then.
 *
 * @param pieces by item id
 */
public record Contents(Freezer freezer, LocalDate day, List<Pieces> pieces) {
  public Contents {
    pieces = List.copyOf(pieces);
  }

  /**
   * Pieces of one item.
   *
   * @param count at least 1
   * @param worth to buy them again at the least list price, rounded to the minor unit; nothing
   *     where nobody sells it
   */
  public record Pieces(Item item, int count, Money worth) {}

  public int count() {
    return pieces.stream().mapToInt(Pieces::count).sum();
  }

  /** To buy all of it again at list price; what nobody sells counts nothing. */
  public Money worth() {
    return pieces.stream().map(Pieces::worth).reduce(Money.ZERO, Money::plus);
  }
}
