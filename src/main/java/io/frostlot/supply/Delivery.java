package io.frostlot.supply;

import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/** How and when an order reaches the keeper; every way yields slots (see {@link Slots}). */
public sealed interface Delivery {
  /**
   * By carrier.
   *
   * @param lead order to ship
   * @param shipWeekdays weekdays on which boxes leave
   * @param transit ship to arrival, to the keeper's zone
   */
  record Shipped(Lead lead, Set<DayOfWeek> shipWeekdays, Transit transit) implements Delivery {
    public Shipped {
      shipWeekdays = Set.copyOf(shipWeekdays);
    }
  }

  /** A local shop: fetched by the keeper on an opening day, ordered ahead by the lead. */
  record Shop(Lead lead, Set<DayOfWeek> openWeekdays) implements Delivery {
    public Shop {
      openWeekdays = Set.copyOf(openWeekdays);
    }
  }

  /** A show: fetched on its dates, ordered ahead by the lead. */
  record Show(Lead lead, List<LocalDate> dates) implements Delivery {
    public Show {
      dates = dates.stream().sorted().distinct().toList();
    }
  }

  /**
   * Days between order and ship (or pick-up).
   *
   * @param days not negative
   * @param shopDays count only the supplier's working days (Monday to Friday, not closed)
   * @param bookAheadDays how many days before the last order date one may order, 0 = not at all
   * @param closed days on which the supplier does not ship, hand over or count
   */
  record Lead(int days, boolean shopDays, int bookAheadDays, List<Period> closed) {
    public Lead {
      closed = List.copyOf(closed);
      if (days < 0 || bookAheadDays < 0) {
        throw new IllegalArgumentException("negative lead: " + days + ", " + bookAheadDays);
      }
    }

    public boolean isOpen(LocalDate day) {
      return closed.stream().noneMatch(period -> period.contains(day));
    }
  }

  /** Calendar days from ship to arrival. */
  record Transit(int earliestDays, int latestDays) {
    public Transit {
      if (earliestDays < 0 || latestDays < earliestDays) {
        throw new IllegalArgumentException("transit " + earliestDays + " to " + latestDays);
      }
    }
  }
}
