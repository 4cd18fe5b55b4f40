package io.frostlot.forecast;

import io.frostlot.keeping.Animal;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * When one meal of an animal is due, never in a fast of its own, and moved to days on which
 * somebody feeds it and clear of handling: to the nearest such day of its own days, else to the
 * nearest such day on which the animal eats and has no other meal, else to one of its own days on
 * which somebody feeds it, else left where it was. No meal is dropped. Of two days as near the
 * earlier is taken. No two meals of an animal have a day in common, and none is moved across a
 * fast: the days of each end before the first of the next, and those begin after its best day.
 *
 * @param intended best day by the schedule
 * @param days on which the meal may come, all of them as above unless {@code place} says otherwise
 */
public record FeedingDay(LocalDate intended, Meal.Days days, Place place) {
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
    Set<LocalDate> taken = new HashSet<>(intended);
    List<FeedingDay> all = new ArrayList<>();
    for (LocalDate day : intended) {
      FeedingDay found = place(animal, day, within, taken);
      taken.add(found.days().best());
      all.add(found);
    }
    return apart(all);
  }

  /** From the last meal on: what the next may use is not left to the one before. */
  private static List<FeedingDay> apart(List<FeedingDay> all) {
    all.sort(Comparator.comparing(feeding -> feeding.days().best()));
    LocalDate next = LocalDate.MAX;
    for (int i = all.size() - 1; i >= 0; i--) {
      LocalDate before = i == 0 ? LocalDate.MIN : all.get(i - 1).days().best();
      FeedingDay feeding = all.get(i);
      Meal.Days days = feeding.days().between(before, next);
      all.set(i, new FeedingDay(feeding.intended(), days, feeding.place()));
      next = days.earliest();
    }
    all.sort(Comparator.comparing(FeedingDay::intended));
    return all;
  }

  private static FeedingDay place(
      Animal animal, LocalDate intended, Period within, Set<LocalDate> taken) {
    Predicate<LocalDate> eats = animal::eatsOn;
    Period own = around(intended, animal.programme().days(), eats.and(within::contains));
    Predicate<LocalDate> fed = eats.and(animal.feedingDays()::contains);
    Predicate<LocalDate> clear = fed.and(animal::isLeftInPeaceAfter);
    Predicate<LocalDate> free = day -> day.equals(intended) || !taken.contains(day);
    Optional<LocalDate> near = own.nearest(intended, clear.and(free));
    if (near.isPresent()) {
      LocalDate best = near.get();
      Place place = best.equals(intended) ? Place.AS_INTENDED : Place.MOVED_WITHIN;
      return new FeedingDay(intended, Meal.Days.of(best, own, clear), place);
    }
    Optional<LocalDate> outside = within.nearest(intended, clear.and(free));
    if (outside.isPresent()) {
      LocalDate day = outside.get();
      return new FeedingDay(intended, new Meal.Days(day, day, day), Place.MOVED_OUTSIDE);
    }
    return own.nearest(intended, fed.and(free))
        .map(day -> new FeedingDay(intended, Meal.Days.of(day, own, fed), Place.NOT_CLEAR))
        .orElseGet(
            () -> new FeedingDay(intended, Meal.Days.of(intended, own, eats), Place.NOBODY_FEEDS));
  }

  private static Period around(
      LocalDate intended, Animal.Leeway leeway, Predicate<LocalDate> open) {
    return new Period(
        last(Stream.iterate(intended, open, day -> day.minusDays(1)).limit(leeway.early() + 1L)),
        last(Stream.iterate(intended, open, day -> day.plusDays(1)).limit(leeway.late() + 1L)));
  }

  private static LocalDate last(Stream<LocalDate> days) {
    return days.reduce((earlier, later) -> later).orElseThrow();
  }
}
