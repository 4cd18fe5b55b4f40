package io.frostlot.program;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What is reckoned for days on which something comes: {@link Effort} in plain numbers. */
final class BusyDays {
  private final double charge;
  private final int[] dayOf;
  private final int[] orders;

  /**
   * Nothing is ordered.
   *
   * @param charge money for a day
   * @param all deliveries, by number
   */
  BusyDays(double charge, List<Deliveries.Delivery> all) {
    this.charge = charge;
    Map<LocalDate, Integer> days = new HashMap<>();
    dayOf = new int[all.size()];
    for (int d = 0; d < dayOf.length; d++) {
      LocalDate day = all.get(d).slot().arrivesEarliest();
      days.putIfAbsent(day, days.size());
      dayOf[d] = days.get(day);
    }
    orders = new int[days.size()];
  }

  /**
   * A delivery comes, or no longer.
   *
   * @param more 1 or -1
   * @return what days cost more than before
   */
  double change(int delivery, int more) {
    int day = dayOf[delivery];
    double before = orders[day] > 0 ? charge : 0;
    orders[day] += more;
    return (orders[day] > 0 ? charge : 0) - before;
  }
}
