package io.frostlot.keeping;

import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The days on which an animal is offered food. */
public sealed interface Schedule {
  /** Feeding days within a period, in order. */
  List<LocalDate> days(Period within);

  /** Meals in a week, on average over many. */
  double mealsInSevenDays();

  /**
   * Every so many days, counted from one known feeding day.
   *
   * @param intervalDays at least 1
   * @param first a feeding day; earlier ones follow by counting back
   */
  record Every(int intervalDays, LocalDate first) implements Schedule {
    public Every {
      if (intervalDays < 1) {
        throw new IllegalArgumentException("feeding interval of " + intervalDays + " days");
      }
    }

    @Override
    public double mealsInSevenDays() {
      return 7.0 / intervalDays;
    }

    @Override
    public List<LocalDate> days(Period within) {
      long ahead = within.from().toEpochDay() - first.toEpochDay();
      LocalDate start = within.from().plusDays(Math.floorMod(-ahead, intervalDays));
      return Stream.iterate(
              start, day -> !day.isAfter(within.to()), day -> day.plusDays(intervalDays))
          .toList();
    }
  }

  /** On fixed weekdays, every week. */
  record Weekdays(Set<DayOfWeek> weekdays) implements Schedule {
    public Weekdays {
      weekdays = Set.copyOf(weekdays);
      if (weekdays.isEmpty()) {
        throw new IllegalArgumentException("no feeding weekday");
      }
    }

    @Override
    public double mealsInSevenDays() {
      return weekdays.size();
    }

    @Override
    public List<LocalDate> days(Period within) {
      return within.days().filter(day -> weekdays.contains(day.getDayOfWeek())).toList();
    }
  }
}
