package io.frostlot.forecast;

import io.frostlot.keeping.Animal;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * When one meal of an animal is due, moved clear of handling: to the nearest day of its own days,
 * else to the nearest on which the animal eats and has no other meal, else left where it was. No
 * meal is dropped. Of two days as near the earlier is taken.
 *
 * @param intended best day by the schedule
 * @param days on which the meal may come, all of them clear unless {@code place} says otherwise
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
    NOT_CLEAR
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
    return all;
  }

  private static FeedingDay place(
      Animal animal, LocalDate intended, Period within, Set<LocalDate> taken) {
    Period own = around(intended, animal.programme().days(), within);
    Predicate<LocalDate> free =
        day -> animal.isLeftInPeaceAfter(day) && (day.equals(intended) || !taken.contains(day));
    Optional<LocalDate> near = nearest(intended, own, free);
    if (near.isPresent()) {
      LocalDate best = near.get();
      Meal.Days days = new Meal.Days(edge(best, -1, own, animal), best, edge(best, 1, own, animal));
      return new FeedingDay(
          intended, days, best.equals(intended) ? Place.AS_INTENDED : Place.MOVED_WITHIN);
    }
    return nearest(intended, within, free.and(animal::eatsOn))
        .map(day -> new FeedingDay(intended, new Meal.Days(day, day, day), Place.MOVED_OUTSIDE))
        .orElseGet(
            () ->
                new FeedingDay(
                    intended, new Meal.Days(own.from(), intended, own.to()), Place.NOT_CLEAR));
  }

  private static Period around(LocalDate best, Animal.Leeway leeway, Period within) {
    LocalDate earliest = best.minusDays(leeway.early());
    LocalDate latest = best.plusDays(leeway.late());
    return new Period(
        earliest.isBefore(within.from()) ? within.from() : earliest,
        latest.isAfter(within.to()) ? within.to() : latest);
  }

  private static Optional<LocalDate> nearest(
      LocalDate to, Period within, Predicate<LocalDate> allowed) {
    LocalDate before = to;
    LocalDate after = to;
    while (within.contains(before) || within.contains(after)) {
      for (LocalDate day : List.of(before, after)) {
        if (within.contains(day) && allowed.test(day)) {
          return Optional.of(day);
        }
      }
      before = before.minusDays(1);
      after = after.plusDays(1);
    }
    return Optional.empty();
  }

  /** The last clear day in one direction. */
  private static LocalDate edge(LocalDate from, int step, Period within, Animal animal) {
    LocalDate day = from;
    while (within.contains(day.plusDays(step)) && animal.isLeftInPeaceAfter(day.plusDays(step))) {
      day = day.plusDays(step);
    }
    return day;
  }
}
