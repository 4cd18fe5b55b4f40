package io.frostlot.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.FeedingDay;
import io.frostlot.forecast.Meal;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.FeedingDays;
import io.frostlot.keeping.Handling;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.Schedule;
import io.frostlot.plan.World;
import io.frostlot.units.Grams;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The forecast held to the meals that the oracle makes of the same scenario: in tiny worlds, and
 * the days of meals of random animals over six weeks. {@code -Dfrostlot.animals=20000} asks for
 * more of them.
 */
class OracleMealsTest {
  private static final int WORLDS = 1000;
  private static final int ANIMALS = Integer.getInteger("frostlot.animals", 2000);
  private static final LocalDate FIRST = LocalDate.of(2031, 3, 3);
  private static final Period SIX_WEEKS = new Period(FIRST, FIRST.plusDays(41));

  @Test
  void the_meals_of_tiny_worlds_are_the_same() {
    for (long seed = 0; seed < WORLDS; seed++) {
      World world = TinyWorlds.of(seed);
      assertThat(world.demands()).as(world.scenario().name()).isEqualTo(OracleMeals.of(world));
    }
  }

  @Test
  void the_days_of_meals_of_random_animals_are_the_same() {
    Map<FeedingDay.Place, Integer> places = new EnumMap<>(FeedingDay.Place.class);
    for (int seed = 0; seed < ANIMALS; seed++) {
      Animal animal = animal(new Random(seed));
      List<OracleDays.Due> forecast = new ArrayList<>();
      for (FeedingDay day : FeedingDay.of(animal, SIX_WEEKS)) {
        places.merge(day.place(), 1, Integer::sum);
        Meal.Days days = day.days();
        forecast.add(
            new OracleDays.Due(
                day.intended(),
                days.best(),
                new TreeSet<>(
                    days.earliest()
                        .datesUntil(days.latest().plusDays(1))
                        .filter(days::contains)
                        .toList())));
      }
      assertThat(forecast)
          .as("seed " + seed + " " + animal)
          .isEqualTo(new OracleDays(animal, SIX_WEEKS).all());
    }
    assertThat(places.keySet()).containsExactly(FeedingDay.Place.values());
    assertThat(places.values()).allSatisfy(meals -> assertThat(meals).isGreaterThan(ANIMALS / 10));
  }

  private static Animal animal(Random random) {
    Schedule schedule =
        random.nextBoolean()
            ? new Schedule.Every(1 + random.nextInt(14), day(random.nextInt(40) - 20))
            : new Schedule.Weekdays(weekdays(random, 1 + random.nextInt(2)));
    Animal.Leeway leeway =
        random.nextBoolean()
            ? Animal.Leeway.NONE
            : new Animal.Leeway(random.nextInt(5), random.nextInt(9));
    int here = random.nextInt(4) > 0 ? -100 : random.nextInt(20);
    int gone = random.nextInt(4) > 0 ? 500 : 20 + random.nextInt(40);
    return new Animal(
            "Ash",
            new Curve.Constant(Grams.of(200)),
            FIRST,
            new Animal.Diet(Set.of("mouse"), Grams.of(30), 1),
            new Animal.Programme(
                schedule,
                new MealSize.Fixed(
                    Grams.of(20), new MealSize.Tolerance(Percent.of("80"), Percent.of("120"))),
                Importance.MAY_SLIDE,
                leeway),
            periods(random, 2, 9),
            new Period(day(here), day(gone)))
        .withHandling(
            periods(random, 2, 12).stream().map(days -> new Handling(days, "show")).toList())
        .withFeedingDays(
            new FeedingDays(
                "rack",
                random.nextBoolean() ? FeedingDays.ANY.weekdays() : weekdays(random, 3),
                periods(random, 2, 12)));
  }

  private static LocalDate day(int day) {
    return FIRST.plusDays(day);
  }

  private static Set<DayOfWeek> weekdays(Random random, int most) {
    Set<DayOfWeek> days = new TreeSet<>();
    for (int i = 0; i < most; i++) {
      days.add(DayOfWeek.of(1 + random.nextInt(7)));
    }
    return days;
  }

  /** None or some, each of up to so many days. */
  private static List<Period> periods(Random random, int most, int days) {
    List<Period> periods = new ArrayList<>();
    for (int i = random.nextInt(most + 1); i > 0; i--) {
      int from = random.nextInt(56) - 7;
      periods.add(new Period(day(from), day(from + random.nextInt(days))));
    }
    return periods;
  }
}
