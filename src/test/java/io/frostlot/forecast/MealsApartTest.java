package io.frostlot.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.FeedingDay.Place;
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
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * No full meal before the last one is digested: half of the days between two meals is common
 * practice; the days below follow by counting. Day 0 is Monday 6 January 2031.
 */
class MealsApartTest {
  private static final LocalDate FIRST = LocalDate.parse("2031-01-06");
  private static final Schedule FRIDAYS = new Schedule.Every(7, day(4));

  private static LocalDate day(int day) {
    return FIRST.plusDays(day);
  }

  private static Period days(int from, int to) {
    return new Period(day(from), day(to));
  }

  private static Animal animal(Schedule schedule, Animal.Leeway leeway, List<Period> fasts) {
    return new Animal(
        "Ada",
        new Curve.Constant(Grams.of(200)),
        FIRST,
        new Animal.Diet(Set.of("mouse"), Grams.of(40), 1),
        new Animal.Programme(
            schedule,
            new MealSize.Fixed(
                Grams.of(20), new MealSize.Tolerance(Percent.of("80"), Percent.of("120"))),
            Importance.MUST,
            leeway),
        fasts,
        Period.ALWAYS);
  }

  private static Animal away(Schedule schedule, Animal.Leeway leeway, Period away) {
    return animal(schedule, leeway, List.of())
        .withFeedingDays(FeedingDays.ANY.withAway(List.of(away)));
  }

  private static List<FeedingDay> of(Animal animal, int planningDays) {
    return FeedingDay.of(animal, days(0, planningDays - 1));
  }

  private static Meal.Days only(int day) {
    return new Meal.Days(day(day), day(day), day(day));
  }

  /**
   * Fed on days 4, 11, ..., nobody there on 14 to 37. Days 13 and 38, the nearest with somebody,
   * are two days after the meal of day 11 and one before that of day 39; four are wanted. So the
   * meals of 18, 25 and 32 stay, for somebody else.
   */
  @Test
  void where_nobody_feeds_for_weeks_no_meals_crowd_at_both_ends() {
    List<FeedingDay> all = of(away(FRIDAYS, Animal.Leeway.NONE, days(14, 37)), 56);
    assertThat(all).extracting(it -> it.days().best()).isEqualTo(FRIDAYS.days(days(0, 55)));
    assertThat(all.stream().filter(it -> it.place() == Place.NOBODY_FEEDS))
        .extracting(FeedingDay::intended)
        .containsExactly(day(18), day(25), day(32));
  }

  /**
   * Handled on days 7 to 25, so that no meal is clear on 4 to 24: that of day 4 comes on 3, six
   * days after that of day -3, but no other can come before.
   */
  @Test
  void before_long_handling_only_one_meal_comes_early() {
    Animal handled =
        animal(FRIDAYS, Animal.Leeway.NONE, List.of())
            .withHandling(List.of(new Handling(days(7, 25), "cleaning")));
    List<FeedingDay> all = of(handled, 42);
    assertThat(all.get(0).days()).isEqualTo(only(3));
    assertThat(all.get(1).days()).isEqualTo(only(11));
    assertThat(all)
        .extracting(FeedingDay::place)
        .startsWith(Place.MOVED_OUTSIDE, Place.NOT_CLEAR, Place.NOT_CLEAR, Place.AS_INTENDED);
  }

  /**
   * The meal of day 11 comes on 12; four days before that is 8, and four before the one of 18 is
   * 14.
   */
  @Test
  void a_moved_meal_and_its_neighbours_keep_apart_on_all_their_days() {
    List<FeedingDay> all = of(away(FRIDAYS, new Animal.Leeway(0, 6), days(11, 11)), 28);
    assertThat(all.get(0).days()).isEqualTo(new Meal.Days(day(4), day(4), day(8)));
    assertThat(all.get(1).days()).isEqualTo(new Meal.Days(day(12), day(12), day(14)));
    assertThat(all.get(2).days()).isEqualTo(new Meal.Days(day(18), day(18), day(24)));
  }

  /** The meal of day 4 could come on day 1, four after that of day -3, but not on day 0. */
  @Test
  void a_meal_is_not_moved_towards_one_before_the_planning_days() {
    assertThat(of(away(FRIDAYS, Animal.Leeway.NONE, days(2, 8)), 28).get(0).days())
        .isEqualTo(only(1));
    assertThat(of(away(FRIDAYS, Animal.Leeway.NONE, days(1, 8)), 28).get(0).place())
        .isEqualTo(Place.NOBODY_FEEDS);
  }

  /**
   * On Mondays and Thursdays three and four days lie between, so two are kept: the meal of Thursday
   * 3 may come on 2 or 5, that of Monday 7 on 5 (two after Thursday 3) or 8 (two before 10).
   */
  @Test
  void meals_on_weekdays_keep_half_of_the_days_between_neighbours() {
    Schedule twice = new Schedule.Weekdays(Set.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY));
    assertThat(of(away(twice, Animal.Leeway.NONE, days(3, 4)), 14).get(1).days())
        .isEqualTo(only(2));
    assertThat(of(away(twice, Animal.Leeway.NONE, days(2, 4)), 14).get(1).days())
        .isEqualTo(only(5));
    assertThat(of(away(twice, Animal.Leeway.NONE, days(6, 7)), 14).get(2).days())
        .isEqualTo(only(8));
    assertThat(of(away(twice, Animal.Leeway.NONE, days(6, 8)), 14).get(2).days())
        .isEqualTo(only(5));
    assertThat(of(away(twice, Animal.Leeway.NONE, days(5, 8)), 14).get(2).place())
        .isEqualTo(Place.NOBODY_FEEDS);
  }

  /** A fast from day 19 to 30; the meal of day 32, nobody there on 31 to 38, is not fed before. */
  @Test
  void no_meal_is_moved_across_a_fast() {
    Animal fasting =
        animal(FRIDAYS, Animal.Leeway.NONE, List.of(days(19, 30)))
            .withFeedingDays(FeedingDays.ANY.withAway(List.of(days(31, 38))));
    assertThat(of(fasting, 56).stream().filter(it -> it.intended().equals(day(32))))
        .extracting(FeedingDay::place)
        .containsExactly(Place.NOBODY_FEEDS);
  }

  /**
   * Eight hundred drawn animals: whatever is moved keeps its distance, on every day it may come.
   */
  @Test
  void whatever_is_moved_keeps_half_of_the_days_between() {
    Random random = new Random(20310106);
    int moved = 0;
    for (int i = 0; i < 800; i++) {
      int every = 2 + random.nextInt(9);
      Schedule schedule = new Schedule.Every(every, day(random.nextInt(every)));
      Animal.Leeway leeway = new Animal.Leeway(random.nextInt(4), random.nextInt(7));
      int from = random.nextInt(40);
      Animal animal = away(schedule, leeway, days(from, from + random.nextInt(20)));
      if (random.nextBoolean()) {
        animal = animal.withHandling(List.of(new Handling(days(30, 30 + random.nextInt(9)), "")));
      }
      List<FeedingDay> all = new ArrayList<>(of(animal, 70));
      for (int k = 1; k < all.size(); k++) {
        FeedingDay before = all.get(k - 1);
        FeedingDay next = all.get(k);
        long apart = ChronoUnit.DAYS.between(before.days().latest(), next.days().earliest());
        if (isMoved(before) || isMoved(next)) {
          moved++;
          assertThat(2 * apart).as("animal %s, meal %s", i, k).isGreaterThanOrEqualTo(every);
        }
        assertThat(apart).isPositive();
      }
    }
    assertThat(moved).isGreaterThan(800);
  }

  private static boolean isMoved(FeedingDay day) {
    return !day.days().best().equals(day.intended());
  }
}
