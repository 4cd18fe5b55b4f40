package io.frostlot.oracle;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Schedule;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The days on which the meals of an animal may come, from the words of "Meal" in DEVELOPERS and of
 * the fields in the README, day by day.
 *
 * <p>Days are of four sorts: it eats (it is here and in no fast); somebody feeds it then; it is
 * handled on none of the three days after that as well; and far enough from the meals before and
 * after for one that is moved. A meal takes the nearest day of the best sort there is, the earlier
 * of two: one of its own that is fed, quiet and far enough; any such day that no fast lies before;
 * one of its own that is fed and far enough; its own day. Then what the next meal may use is taken
 * from the one before.
 */
final class OracleDays {
  private static final int QUIET_DAYS = 3;
  private final Animal animal;
  private final Period within;

  /**
   * One meal.
   *
   * @param best one of the days
   */
  record Due(LocalDate intended, LocalDate best, SortedSet<LocalDate> days) {
    private boolean isMoved() {
      return !best.equals(intended);
    }
  }

  /** Days of which one is in question, and how far it may go. */
  private record Span(LocalDate first, LocalDate last) {
    boolean holds(LocalDate day) {
      return !day.isBefore(first) && !day.isAfter(last);
    }
  }

  OracleDays(Animal animal, Period within) {
    this.animal = animal;
    this.within = within;
  }

  /** Its meals that are meant for days of the period, in order. */
  List<Due> all() {
    List<LocalDate> meant = all(within.from(), within.to(), day -> isScheduled(day) && eats(day));
    List<Due> all = new ArrayList<>();
    for (int i = 0; i < meant.size(); i++) {
      LocalDate day = meant.get(i);
      LocalDate first =
          i > 0
              ? all.get(i - 1).best().plusDays(half(day))
              : Optional.of(day.minusDays(since(day)))
                  .filter(this::eats)
                  .map(before -> before.plusDays(half(day)))
                  .orElse(LocalDate.MIN);
      Optional<LocalDate> next =
          i + 1 < meant.size()
              ? Optional.of(meant.get(i + 1))
              : Optional.of(after(day)).filter(this::eats);
      LocalDate last = next.map(it -> it.minusDays(half(it))).orElse(LocalDate.MAX);
      all.add(place(day, new Span(first, last)));
    }
    for (int i = all.size() - 1; i > 0; i--) {
      apart(all, i);
    }
    return all;
  }

  /** What one meal may use and the one before may not. */
  private void apart(List<Due> all, int i) {
    Due before = all.get(i - 1);
    Due due = all.get(i);
    long between = before.isMoved() || due.isMoved() ? half(due.intended()) : 1;
    due.days().removeIf(day -> day.isBefore(before.best().plusDays(between)));
    before.days().removeIf(day -> day.isAfter(due.days().first().minusDays(between)));
  }

  private Due place(LocalDate day, Span far) {
    List<LocalDate> own =
        Stream.concat(
                steps(day, -1, animal.programme().days().early()),
                steps(day, 1, animal.programme().days().late()).skip(1))
            .toList();
    Optional<LocalDate> best = nearest(day, own, it -> isQuiet(it) && far.holds(it));
    if (best.isPresent()) {
      return due(day, best.get(), own, this::isQuiet);
    }
    List<LocalDate> unbroken =
        Stream.concat(steps(day, -1, Integer.MAX_VALUE), steps(day, 1, Integer.MAX_VALUE)).toList();
    best = nearest(day, unbroken, it -> isQuiet(it) && far.holds(it));
    if (best.isPresent()) {
      return due(day, best.get(), List.of(best.get()), it -> true);
    }
    return nearest(day, own, it -> isFed(it) && far.holds(it))
        .map(it -> due(day, it, own, this::isFed))
        .orElseGet(() -> due(day, day, own, it -> true));
  }

  private static Due due(
      LocalDate meant, LocalDate best, List<LocalDate> days, Predicate<LocalDate> open) {
    return new Due(meant, best, new TreeSet<>(days.stream().filter(open).toList()));
  }

  private static Optional<LocalDate> nearest(
      LocalDate to, List<LocalDate> days, Predicate<LocalDate> open) {
    return days.stream()
        .filter(open)
        .min(
            (a, b) -> {
              long nearer = Math.abs(days(to, a)) - Math.abs(days(to, b));
              return nearer == 0 ? a.compareTo(b) : Long.signum(nearer);
            });
  }

  private static long days(LocalDate from, LocalDate to) {
    return to.toEpochDay() - from.toEpochDay();
  }

  /** A day and so many before or after it, as long as it eats and the period lasts. */
  private Stream<LocalDate> steps(LocalDate day, int way, int most) {
    return Stream.iterate(day, it -> within.contains(it) && eats(it), it -> it.plusDays(way))
        .limit(most + 1L);
  }

  private static List<LocalDate> all(LocalDate from, LocalDate to, Predicate<LocalDate> which) {
    return from.datesUntil(to.plusDays(1)).filter(which).toList();
  }

  private boolean isScheduled(LocalDate day) {
    Schedule schedule = animal.programme().schedule();
    return schedule instanceof Schedule.Every every
        ? days(every.first(), day) % every.intervalDays() == 0
        : ((Schedule.Weekdays) schedule).weekdays().contains(day.getDayOfWeek());
  }

  /** Days since the last one of the schedule. */
  private int since(LocalDate day) {
    int since = 1;
    while (!isScheduled(day.minusDays(since))) {
      since++;
    }
    return since;
  }

  private LocalDate after(LocalDate day) {
    LocalDate after = day.plusDays(1);
    while (!isScheduled(after)) {
      after = after.plusDays(1);
    }
    return after;
  }

  /** Of the days since the last one of the schedule, rounded up. */
  private int half(LocalDate day) {
    int since = since(day);
    return since / 2 + since % 2;
  }

  private boolean eats(LocalDate day) {
    return animal.present().contains(day) && !isIn(animal.fasts(), day);
  }

  private boolean isFed(LocalDate day) {
    return eats(day)
        && animal.feedingDays().weekdays().contains(day.getDayOfWeek())
        && !isIn(animal.feedingDays().away(), day);
  }

  private boolean isQuiet(LocalDate day) {
    List<Period> handled = animal.handling().stream().map(it -> it.days()).toList();
    return isFed(day)
        && all(day.plusDays(1), day.plusDays(QUIET_DAYS), it -> isIn(handled, it)).isEmpty();
  }

  private static boolean isIn(List<Period> periods, LocalDate day) {
    return periods.stream()
        .anyMatch(period -> !day.isBefore(period.from()) && !day.isAfter(period.to()));
  }
}
