package io.frostlot.plan;

import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import java.time.LocalDate;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Room taken in a freezer.
 *
 * @param byDay for each planning day, at the time of day at which the keeper wants it checked
 */
public record FreezerLoad(Freezer freezer, SortedMap<LocalDate, Litres> byDay) {
  public FreezerLoad {
    byDay = Collections.unmodifiableSortedMap(new TreeMap<>(byDay));
  }

  /** The first of the days on which it is fullest. */
  public LocalDate peakDay() {
    LocalDate peak = byDay.firstKey();
    for (LocalDate day : byDay.keySet()) {
      if (on(day).compareTo(on(peak)) > 0) {
        peak = day;
      }
    }
    return peak;
  }

  public Litres on(LocalDate day) {
    return byDay.getOrDefault(day, Litres.ZERO);
  }

  public Litres peak() {
    return on(peakDay());
  }

  /** Share of the usable room that is taken on a day, 1 = full. */
  public double share(LocalDate day) {
    Litres usable = freezer.usableOn(day);
    return on(day).equals(Litres.ZERO) ? 0 : on(day).toDouble() / usable.toDouble();
  }

  /** Room that is left on a day. */
  public Litres free(LocalDate day) {
    return new Litres(Math.max(0, freezer.usableOn(day).microlitres() - on(day).microlitres()));
  }
}
