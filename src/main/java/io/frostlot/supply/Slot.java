package io.frostlot.supply;

import java.time.LocalDate;
import java.util.Comparator;

/**
 * One possible delivery.
 *
 * @param supplier supplier id
 * @param ordered the order date
 * @param ships ship date, or the day of pick-up
 * @param arrivesEarliest counts for use-by, holding and freezer space
 * @param arrivesLatest counts for eating
 */
public record Slot(
    String supplier,
    LocalDate ordered,
    LocalDate ships,
    LocalDate arrivesEarliest,
    LocalDate arrivesLatest)
    implements Comparable<Slot> {
  private static final Comparator<Slot> ORDER =
      Comparator.comparing(Slot::arrivesEarliest)
          .thenComparing(Slot::arrivesLatest)
          .thenComparing(Slot::ordered)
          .thenComparing(Slot::ships)
          .thenComparing(Slot::supplier);

  public Slot {
    if (ships.isBefore(ordered)
        || arrivesEarliest.isBefore(ships)
        || arrivesLatest.isBefore(arrivesEarliest)) {
      throw new IllegalArgumentException("slot out of order: " + supplier + " " + ordered);
    }
  }

  /** The date that a promotion looks at. */
  public LocalDate date(DateBasis basis) {
    return switch (basis) {
      case ORDER -> ordered;
      case SHIP -> ships;
      case ARRIVAL -> arrivesEarliest;
    };
  }

  @Override
  public int compareTo(Slot other) {
    return ORDER.compare(this, other);
  }
}
