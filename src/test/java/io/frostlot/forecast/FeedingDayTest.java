package io.frostlot.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.FeedingDays;
import io.frostlot.keeping.Handling;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.Schedule;
import io.frostlot.units.Grams;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Three days after a meal without handling are those of the Merck Veterinary Manual; the days below
 * follow by counting on a calendar.
 */
class FeedingDayTest {
  private static final LocalDate FIRST = LocalDate.parse("2031-01-06");
  private static final Period FOUR_WEEKS = new Period(FIRST, FIRST.plusDays(27));

  /** Fed on days 0, 7, 14 and 21. */
  private static Animal weekly(Animal.Leeway leeway, Handling... handling) {
    return new Animal(
            "Amber",
            new Curve.Constant(Grams.of(400)),
            FIRST,
            new Animal.Diet(Set.of("mouse"), Grams.of(30), 1),
            new Animal.Programme(
                new Schedule.Every(7, FIRST),
                new MealSize.Fixed(
                    Grams.of(20), new MealSize.Tolerance(Percent.of("80"), Percent.of("120"))),
                Importance.MAY_SLIDE,
                leeway),
            List.of(),
            Period.ALWAYS)
        .withHandling(List.of(handling));
  }

  private static Handling on(int from, int to) {
    return new Handling(new Period(FIRST.plusDays(from), FIRST.plusDays(to)), "show");
  }

  private static FeedingDay second(Animal animal) {
    List<FeedingDay> all = FeedingDay.of(animal, FOUR_WEEKS);
    assertThat(all).hasSize(4);
    return all.get(1);
  }

  private static Meal.Days days(int earliest, int best, int latest) {
    return new Meal.Days(FIRST.plusDays(earliest), FIRST.plusDays(best), FIRST.plusDays(latest));
  }

  @Test
  void leaves_a_meal_four_days_before_and_one_on_the_day() {
    assertThat(second(weekly(new Animal.Leeway(0, 0), on(11, 11))))
        .isEqualTo(new FeedingDay(FIRST.plusDays(7), days(7, 7, 7), FeedingDay.Place.AS_INTENDED));
    assertThat(second(weekly(new Animal.Leeway(0, 0), on(7, 7))).place())
        .isEqualTo(FeedingDay.Place.AS_INTENDED);
  }

  private static Meal.Days closed(Meal.Days days, int... closed) {
    Set<LocalDate> dates =
        IntStream.of(closed).mapToObj(FIRST::plusDays).collect(Collectors.toSet());
    return new Meal.Days(days.earliest(), days.best(), days.latest(), dates);
  }

  /**
   * Handled on day 9, so none on 6, 7 and 8: 5 is two days off, as 9 is, and the earlier. The third
   * may come on day 14, and four days before, half of seven, is day 10.
   */
  @Test
  void moves_to_the_nearest_of_its_own_days() {
    assertThat(second(weekly(new Animal.Leeway(3, 0), on(9, 9))))
        .isEqualTo(new FeedingDay(FIRST.plusDays(7), days(4, 5, 5), FeedingDay.Place.MOVED_WITHIN));
    assertThat(second(weekly(new Animal.Leeway(0, 3), on(9, 9))))
        .isEqualTo(
            new FeedingDay(FIRST.plusDays(7), days(9, 9, 10), FeedingDay.Place.MOVED_WITHIN));
  }

  /** Handled on days 8 to 10, so none on 5 to 9: 4 is three days off, as 10 is, and the earlier. */
  @Test
  void moves_out_of_its_days_where_none_of_them_is_clear() {
    assertThat(second(weekly(new Animal.Leeway(1, 1), on(8, 10))))
        .isEqualTo(
            new FeedingDay(FIRST.plusDays(7), days(4, 4, 4), FeedingDay.Place.MOVED_OUTSIDE));
  }

  /**
   * Of days 7 to 12, day 10 is the third before the handling of day 13, and the first not clear.
   */
  @Test
  void keeps_what_is_left_of_its_days_clear() {
    assertThat(second(weekly(new Animal.Leeway(0, 5), on(13, 13))))
        .isEqualTo(new FeedingDay(FIRST.plusDays(7), days(7, 7, 9), FeedingDay.Place.AS_INTENDED));
  }

  @Test
  void drops_no_meal_where_no_day_is_clear() {
    assertThat(second(weekly(new Animal.Leeway(1, 1), on(0, 60))))
        .isEqualTo(new FeedingDay(FIRST.plusDays(7), days(6, 7, 8), FeedingDay.Place.NOT_CLEAR));
  }

  private static Animal fedOn(Animal animal, Set<DayOfWeek> weekdays, int awayFrom, int awayTo) {
    List<Period> away =
        awayTo < awayFrom
            ? List.of()
            : List.of(new Period(FIRST.plusDays(awayFrom), FIRST.plusDays(awayTo)));
    return animal.withFeedingDays(new FeedingDays("rack", weekdays, away));
  }

  /** Day 7 is a Monday; of days 6 to 11, 8 and 11 are a Tuesday and a Friday. */
  @Test
  void moves_to_the_weekdays_of_its_room() {
    Animal rack =
        fedOn(weekly(new Animal.Leeway(1, 4)), Set.of(DayOfWeek.TUESDAY, DayOfWeek.FRIDAY), 0, -1);
    assertThat(second(rack))
        .isEqualTo(
            new FeedingDay(
                FIRST.plusDays(7), closed(days(8, 8, 11), 9, 10), FeedingDay.Place.MOVED_WITHIN));
  }

  /**
   * Of days 7 to 10, 9 and 10 are left; of 6 to 8 none, and 4 is three days off as 10 is; in the
   * end nobody is there at all.
   */
  @Test
  void moves_off_the_days_away_and_drops_no_meal() {
    Animal any = fedOn(weekly(new Animal.Leeway(0, 3)), FeedingDays.ANY.weekdays(), 6, 8);
    assertThat(second(any))
        .isEqualTo(
            new FeedingDay(FIRST.plusDays(7), days(9, 9, 10), FeedingDay.Place.MOVED_WITHIN));
    Animal longer = fedOn(weekly(new Animal.Leeway(1, 1)), FeedingDays.ANY.weekdays(), 5, 9);
    assertThat(second(longer))
        .isEqualTo(
            new FeedingDay(FIRST.plusDays(7), days(4, 4, 4), FeedingDay.Place.MOVED_OUTSIDE));
    Animal always = fedOn(weekly(new Animal.Leeway(1, 1)), FeedingDays.ANY.weekdays(), 0, 60);
    assertThat(second(always))
        .isEqualTo(new FeedingDay(FIRST.plusDays(7), days(6, 7, 8), FeedingDay.Place.NOBODY_FEEDS));
  }

  /**
   * It may be a day early and three late, days 6 to 10, but neither in a fast nor beyond one: the
   * days before day 9 are left, before day 8, and after day 6.
   */
  @Test
  void is_not_moved_into_a_fast_nor_across_one() {
    assertThat(second(fasting(9, 12)).days()).isEqualTo(days(6, 7, 8));
    assertThat(second(fasting(8, 9)).days()).isEqualTo(days(6, 7, 7));
    assertThat(second(fasting(6, 6)).days()).isEqualTo(days(7, 7, 10));
  }

  private static List<Meal.Days> all(Animal animal) {
    return FeedingDay.of(animal, FOUR_WEEKS).stream().map(FeedingDay::days).toList();
  }

  /** Every seven days: up to 9 days late, days 0 to 9, 7 to 16, ...: each ends before the next. */
  @Test
  void is_late_only_until_the_next_meal_may_come() {
    assertThat(all(weekly(new Animal.Leeway(0, 9))))
        .containsExactly(days(0, 0, 6), days(7, 7, 13), days(14, 14, 20), days(21, 21, 27));
    assertThat(all(weekly(new Animal.Leeway(2, 6))))
        .containsExactly(days(0, 0, 4), days(5, 7, 11), days(12, 14, 18), days(19, 21, 27));
  }

  /**
   * Up to ten days early would be before the meal before: the day after that one's is the first.
   */
  @Test
  void is_early_only_after_the_meal_before() {
    assertThat(all(weekly(new Animal.Leeway(10, 1))))
        .containsExactly(days(0, 0, 0), days(1, 7, 7), days(8, 14, 14), days(15, 21, 22));
  }

  private static Animal fasting(int from, int to) {
    Animal weekly = weekly(new Animal.Leeway(1, 3));
    return new Animal(
        weekly.name(),
        weekly.growth(),
        weekly.weighed(),
        weekly.diet(),
        weekly.programme(),
        List.of(new Period(FIRST.plusDays(from), FIRST.plusDays(to))),
        Period.ALWAYS);
  }

  /** Handled for all the time, and nobody there on day 7: a day with somebody comes first. */
  @Test
  void is_fed_by_somebody_before_it_is_left_in_peace() {
    Animal busy =
        fedOn(weekly(new Animal.Leeway(1, 1), on(0, 60)), FeedingDays.ANY.weekdays(), 7, 7);
    assertThat(second(busy))
        .isEqualTo(
            new FeedingDay(
                FIRST.plusDays(7), closed(days(6, 6, 8), 7), FeedingDay.Place.NOT_CLEAR));
  }
}
