package io.frostlot.keeping;

import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The days on which an animal is offered food. */
public sealed interface Schedule {
  /** Feeding days within a period, in order. */
  List<LocalDate> days(Period within);

  /** Meals in a week, on average over many. */
  double mealsInSevenDays();

  /** The feeding day before one of them. */
  LocalDate before(LocalDate feedingDay);

  /** The feeding day after one of them. */
  LocalDate after(LocalDate feedingDay);

  /**
   * Days that should lie between one of its feeding days and the one before where either is moved:
   * half of those between them, rounded up, so that the last full meal is digested (common
   * practice).
   */
  default long leastDaysBefore(LocalDate feedingDay) {
    return (ChronoUnit.DAYS.between(before(feedingDay), feedingDay) + 1) / 2;
  }

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
    public LocalDate before(LocalDate feedingDay) {
      return feedingDay.minusDays(intervalDays);
    }

    @Override
    public LocalDate after(LocalDate feedingDay) {
      return feedingDay.plusDays(intervalDays);
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
    public LocalDate before(LocalDate feedingDay) {
      return next(feedingDay, -1);
    }

    @Override
    public LocalDate after(LocalDate feedingDay) {
      return next(feedingDay, 1);
    }

    private LocalDate next(LocalDate day, int step) {
      return Stream.iterate(day.plusDays(step), it -> it.plusDays(step))
          .filter(it -> weekdays.contains(it.getDayOfWeek()))
          .findFirst()
          .orElseThrow();
    }

    @Override
    public List<LocalDate> days(Period within) {
      return within.days().filter(day -> weekdays.contains(day.getDayOfWeek())).toList();
    }
  }
}
