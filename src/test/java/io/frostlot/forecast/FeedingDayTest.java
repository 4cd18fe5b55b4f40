package io.frostlot.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.Handling;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.Schedule;
import io.frostlot.units.Grams;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
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

  /** Handled on day 9, so none on 6, 7 and 8: 5 is two days off, as 9 is, and the earlier. */
  @Test
  void moves_to_the_nearest_of_its_own_days() {
    assertThat(second(weekly(new Animal.Leeway(3, 3), on(9, 9))))
        .isEqualTo(new FeedingDay(FIRST.plusDays(7), days(4, 5, 5), FeedingDay.Place.MOVED_WITHIN));
    assertThat(second(weekly(new Animal.Leeway(1, 3), on(9, 9))))
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

  /** Handled on days 1 to 26: every day up to 25 has handling after it, 26 and 27 have none. */
  @Test
  void puts_no_two_meals_on_one_day() {
    List<FeedingDay> all = FeedingDay.of(weekly(new Animal.Leeway(0, 0), on(1, 26)), FOUR_WEEKS);
    assertThat(all).extracting(day -> day.days().best()).doesNotHaveDuplicates();
    assertThat(all.get(0).days().best()).isEqualTo(FIRST.plusDays(26));
    assertThat(all.get(1).days().best()).isEqualTo(FIRST.plusDays(27));
    assertThat(all.get(2).place()).isEqualTo(FeedingDay.Place.NOT_CLEAR);
  }
}
