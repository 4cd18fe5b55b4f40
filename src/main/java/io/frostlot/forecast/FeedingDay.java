package io.frostlot.forecast;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Schedule;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;

/**
 * When one meal of an animal is due, never in a fast of its own, and moved to days on which
 * somebody feeds it and clear of handling: to the nearest such day of its own days, else to the
 * nearest such day at all, else to one of its own days on which somebody feeds it, else left where
 * it was. No meal is dropped. Of two days as near the earlier is taken. One that is moved keeps
 * from the meals before and after it, on whichever of their days they come, at least half of the
 * days between them (rounded up): a full meal is not fed before the last one is digested (common
 * practice). No two meals of an animal have a day in common, and none is moved across another or
 * across a fast: the days of each end before the first of the next, and those begin after its best
 * day.
 *
 * @param intended best day by the schedule
 * @param days on which the meal may come, all of them as above unless {@code place} says otherwise
 */
public record FeedingDay(LocalDate intended, Meal.Days days, Place place) {
  /** More than any planning has. */
  private static final Animal.Leeway ANY_DAYS = new Animal.Leeway(5000, 5000);

  /** Where a meal came to lie. */
  public enum Place {
    AS_INTENDED,
    /** On another of its days. */
    MOVED_WITHIN,
    /** Before or after all of its days. */
    MOVED_OUTSIDE,
    /** No day is clear: it comes before handling all the same. */
    NOT_CLEAR,
    /** Nobody is there to feed it on any day that it could be moved to: somebody must be found. */
    NOBODY_FEEDS
  }

  /** All feeding days of an animal whose intended day lies in a period, by intended day. */
  public static List<FeedingDay> of(Animal animal, Period within) {
    List<LocalDate> intended = animal.mealDays(within);
    List<FeedingDay> all = new ArrayList<>();
    for (int i = 0; i < intended.size(); i++) {
      LocalDate day = intended.get(i);
      Optional<LocalDate> before =
          i == 0
              ? beyond(animal, Schedule::before, day)
              : Optional.of(all.get(i - 1).days().best());
      Optional<LocalDate> after =
          i + 1 == intended.size()
              ? beyond(animal, Schedule::after, day)
              : Optional.of(intended.get(i + 1));
      all.add(place(animal, day, within, reach(animal, day, before, after)));
    }
    return apart(animal, all);
  }

  /** A meal by the schedule outside of the period; empty where it gets none then. */
  private static Optional<LocalDate> beyond(
      Animal animal, BiFunction<Schedule, LocalDate, LocalDate> neighbour, LocalDate day) {
    return Optional.of(neighbour.apply(animal.programme().schedule(), day)).filter(animal::eatsOn);
  }

  /** Days that are far enough from the meal before, where that is now, and from the next one. */
  private static Predicate<LocalDate> reach(
      Animal animal, LocalDate day, Optional<LocalDate> before, Optional<LocalDate> after) {
    Schedule schedule = animal.programme().schedule();
    LocalDate first =
        before.map(it -> it.plusDays(schedule.leastDaysBefore(day))).orElse(LocalDate.MIN);
    LocalDate last =
        after.map(it -> it.minusDays(schedule.leastDaysBefore(it))).orElse(LocalDate.MAX);
    return it -> !it.isBefore(first) && !it.isAfter(last);
  }

  /** From the last meal on: what the next may use is not left to the one before. */
  private static List<FeedingDay> apart(Animal animal, List<FeedingDay> all) {
    LocalDate last = LocalDate.MAX;
    for (int i = all.size() - 1; i >= 0; i--) {
      FeedingDay feeding = all.get(i);
      long between = i == 0 ? 1 : between(animal, all.get(i - 1), feeding);
      LocalDate first = i == 0 ? LocalDate.MIN : all.get(i - 1).days().best().plusDays(between);
      Meal.Days days = feeding.days().within(new Period(first, last));
      all.set(i, new FeedingDay(feeding.intended(), days, feeding.place()));
      last = days.earliest().minusDays(between);
    }
    return all;
  }

  /** Least days between two meals in a row. */
  private static long between(Animal animal, FeedingDay before, FeedingDay feeding) {
    return before.isMoved() || feeding.isMoved()
        ? animal.programme().schedule().leastDaysBefore(feeding.intended())
        : 1;
  }

  private boolean isMoved() {
    return !days.best().equals(intended);
  }

  private static FeedingDay place(
      Animal animal, LocalDate intended, Period within, Predicate<LocalDate> reach) {
    Predicate<LocalDate> eats = animal::eatsOn;
    Period own = around(intended, animal.programme().days(), eats.and(within::contains));
    Predicate<LocalDate> fed = eats.and(animal.feedingDays()::contains);
    Predicate<LocalDate> clear = fed.and(animal::isLeftInPeaceAfter);
    Optional<LocalDate> near = own.nearest(intended, clear.and(reach));
    if (near.isPresent()) {
      LocalDate best = near.get();
      Place place = best.equals(intended) ? Place.AS_INTENDED : Place.MOVED_WITHIN;
      return new FeedingDay(intended, Meal.Days.of(best, own, clear), place);
    }
    Period unbroken = around(intended, ANY_DAYS, eats.and(within::contains).and(reach));
    Optional<LocalDate> outside = unbroken.nearest(intended, clear);
    if (outside.isPresent()) {
      LocalDate day = outside.get();
      return new FeedingDay(intended, new Meal.Days(day, day, day), Place.MOVED_OUTSIDE);
    }
    return own.nearest(intended, fed.and(reach))
        .map(day -> new FeedingDay(intended, Meal.Days.of(day, own, fed), Place.NOT_CLEAR))
        .orElseGet(
            () -> new FeedingDay(intended, Meal.Days.of(intended, own, eats), Place.NOBODY_FEEDS));
  }

  private static Period around(
      LocalDate intended, Animal.Leeway leeway, Predicate<LocalDate> open) {
    return new Period(
        farthest(intended, -1, leeway.early(), open), farthest(intended, 1, leeway.late(), open));
  }

  /** The last day up to which all are open, at most so many steps from one that is. */
  private static LocalDate farthest(LocalDate from, int step, int most, Predicate<LocalDate> open) {
    LocalDate day = from;
    for (int n = 0; n < most; n++) {
      LocalDate next = day.plusDays(step);
      if (!open.test(next)) {
        return day;
      }
      day = next;
    }
    return day;
  }
}
