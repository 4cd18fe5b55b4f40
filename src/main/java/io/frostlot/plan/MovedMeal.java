package io.frostlot.plan;

import io.frostlot.forecast.FeedingDay;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.FeedingDays;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/**
 * A meal that does not come as intended, since the animal is handled or nobody feeds it then.
 *
 * @param reason why not on the intended day
 */
public record MovedMeal(String animal, FeedingDay day, Reason reason) {
  /**
   * Why.
   *
   * @param what an animal is handled for, or a room that is not fed on some weekday; may be empty
   */
  public record Reason(Cause cause, String what) {}

  /** What kept it from its day; what is planned by the week stands last. */
  public enum Cause {
    HANDLING,
    KEEPER_AWAY,
    ROOM_NOT_FED,
    /** On some of its days the room is not fed, on the others nobody is there. */
    ROOM_AND_KEEPER
  }

  /** Those of the planning days, by animal and intended day. */
  public static List<MovedMeal> of(Scenario scenario) {
    return scenario.collection().animals().stream()
        .flatMap((Animal animal) -> of(animal, scenario))
        .toList();
  }

  private static Stream<MovedMeal> of(Animal animal, Scenario scenario) {
    return FeedingDay.of(animal, scenario.planning()).stream()
        .filter(day -> day.place() != FeedingDay.Place.AS_INTENDED)
        .map(day -> new MovedMeal(animal.name(), day, reason(animal, day)));
  }

  private static Reason reason(Animal animal, FeedingDay day) {
    FeedingDays fed = animal.feedingDays();
    LocalDate intended = day.intended();
    return animal.handling().stream()
        .filter(it -> it.disturbs(intended))
        .map(it -> new Reason(Cause.HANDLING, it.what()))
        .findFirst()
        .orElseGet(
            () ->
                isLeftByBoth(animal, day)
                    ? new Reason(Cause.ROOM_AND_KEEPER, fed.room())
                    : fed.isAway(intended)
                        ? new Reason(Cause.KEEPER_AWAY, "")
                        : new Reason(Cause.ROOM_NOT_FED, fed.room()));
  }

  /** Is none of its own days left, since some are no weekdays of its room and others away? */
  private static boolean isLeftByBoth(Animal animal, FeedingDay day) {
    FeedingDays fed = animal.feedingDays();
    Animal.Leeway leeway = animal.programme().days();
    Period own =
        new Period(
            day.intended().minusDays(leeway.early()), day.intended().plusDays(leeway.late()));
    return own.days().noneMatch(fed::contains)
        && own.days().anyMatch(it -> !fed.isWeekday(it))
        && own.days().anyMatch(it -> fed.isWeekday(it) && fed.isAway(it));
  }

  /** Does it only keep to the weekdays of its room, on one of its own days? */
  public boolean isByTheWeek() {
    return reason.cause() == Cause.ROOM_NOT_FED && day.place() == FeedingDay.Place.MOVED_WITHIN;
  }
}
