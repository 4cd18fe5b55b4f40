package io.frostlot.plan;

import io.frostlot.supply.Slot;
import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a plan says of itself, so that it can be compared when its world has moved on.
 *
 * @param digest of its inputs
 * @param unmet meals not met, by day
 */
public record Outline(String digest, Totals totals, List<Ordered> orders, List<Unmet> unmet) {
  public Outline {
    orders = List.copyOf(orders);
    unmet = List.copyOf(unmet);
  }

  /** What it costs in all, and the cash in that. */
  public record Totals(Money cost, Money cash) {}

  /**
   * An order.
   *
   * @param packs by pack id
   */
  public record Ordered(
      String supplier,
      LocalDate orderBy,
      LocalDate arrives,
      SortedMap<String, Integer> packs,
      Money total) {
    public Ordered {
      packs = Collections.unmodifiableSortedMap(new TreeMap<>(packs));
    }
  }

  /** A meal that is not met. */
  public record Unmet(String animal, LocalDate day) {}

  public static Outline of(String digest, Answer.Judged judged, Outcome outcome) {
    Books books = judged.books();
    return new Outline(
        digest,
        new Totals(judged.standing().money(), books.total(Books.Account.CASH)),
        judged.plan().orders().stream().map(order -> ordered(order, books)).toList(),
        outcome.missed().stream()
            .map(missed -> missed.demand().meal())
            .map(meal -> new Unmet(meal.eater(), meal.days().best()))
            .toList());
  }

  /** An order as the books have it. */
  public static Ordered ordered(Order order, Books books) {
    Slot slot = order.slot();
    return new Ordered(
        slot.supplier(),
        slot.ordered(),
        slot.arrivesEarliest(),
        order.packsById(),
        books.ledger(slot).total());
  }
}
