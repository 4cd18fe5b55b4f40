package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.FeedingDay;
import io.frostlot.forecast.Meal;
import io.frostlot.keeping.Animal;
import io.frostlot.plan.Demand;
import io.frostlot.plan.MovedMeal;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From events.csv to the days of meals. */
class EventsTest {
  @TempDir Path folder;

  private Scenario with(String events) throws IOException {
    Samples.goodCopy(folder);
    Files.writeString(folder.resolve("events.csv"), "days,animal,what\n" + events);
    return Samples.accepted(ScenarioFolder.read(folder)).scenario();
  }

  /**
   * Amber eats on 10 January, a day earlier at most and three later; handled on the 12th, none may
   * come on the 9th, 10th and 11th, so that the 12th is the nearest day of its own.
   */
  @Test
  void moves_the_meals_of_the_animal_that_is_handled() throws IOException {
    Scenario scenario = with("2031-01-12,Amber,show\n");
    LocalDate day = LocalDate.parse("2031-01-12");

    assertThat(MovedMeal.of(scenario))
        .containsExactly(
            new MovedMeal(
                "Amber",
                new FeedingDay(
                    LocalDate.parse("2031-01-10"),
                    new Meal.Days(day, day, LocalDate.parse("2031-01-13")),
                    FeedingDay.Place.MOVED_WITHIN),
                new MovedMeal.Reason(MovedMeal.Cause.HANDLING, "show")));
    assertThat(World.of(scenario).demands())
        .extracting(Demand::meal)
        .filteredOn(meal -> meal.id().equals("Amber 2031-01-10"))
        .singleElement()
        .satisfies(meal -> assertThat(meal.days().earliest()).isEqualTo(day));
  }

  @Test
  void an_event_without_a_name_concerns_all_animals_and_drops_no_meal() throws IOException {
    Scenario calm = with("");
    Scenario handled = with("2031-01-12/2031-01-13,,cleaning\n");

    assertThat(handled.collection().animals())
        .extracting(Animal::handling)
        .allSatisfy(handling -> assertThat(handling).hasSize(1));
    assertThat(mealIds(handled)).containsExactlyInAnyOrderElementsOf(mealIds(calm));
  }

  private static List<String> mealIds(Scenario scenario) {
    return World.of(scenario).demands().stream().map(demand -> demand.meal().id()).toList();
  }
}
