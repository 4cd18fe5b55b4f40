package io.frostlot.plan;

import io.frostlot.forecast.FeedingDay;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Handling;
import java.util.List;
import java.util.stream.Stream;

/**
 * A meal that does not come as intended since the animal is handled.
 *
 * @param what it is handled for
 */
public record MovedMeal(String animal, FeedingDay day, String what) {

  /** Those of the planning days, by animal and intended day. */
  public static List<MovedMeal> of(Scenario scenario) {
    return scenario.collection().animals().stream()
        .flatMap((Animal animal) -> of(animal, scenario))
        .toList();
  }

  private static Stream<MovedMeal> of(Animal animal, Scenario scenario) {
    return FeedingDay.of(animal, scenario.planning()).stream()
        .filter(day -> day.place() != FeedingDay.Place.AS_INTENDED)
        .map(day -> new MovedMeal(animal.name(), day, what(animal, day)));
  }

  private static String what(Animal animal, FeedingDay day) {
    return animal.handling().stream()
        .filter(it -> it.disturbs(day.intended()))
        .map(Handling::what)
        .findFirst()
        .orElse("");
  }
}
