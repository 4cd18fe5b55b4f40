package io.frostlot.forecast;

import io.frostlot.keeping.Animal;
import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import io.frostlot.units.Period;
import io.frostlot.units.SizeBand;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Turns feeding programmes and growth into dated meals, and meals into the options that would do.
 */
public final class Projection {
  private Projection() {}

  /** The meals of an animal whose intended day lies in a period, by that day. */
  public static List<Meal> meals(Animal animal, Period within) {
    Animal.Programme programme = animal.programme();
    Animal.Diet diet = animal.diet();
    List<Meal> meals = new ArrayList<>();
    for (FeedingDay feeding : FeedingDay.of(animal, within)) {
      LocalDate day = feeding.intended();
      meals.add(
          new Meal(
              animal.name() + " " + day,
              animal.name(),
              1,
              feeding.days(),
              new Meal.Prey(
                  diet.kinds(),
                  programme.size().windowFor(animal.massOn(day)),
                  diet.largest().forMass(animal.massOn(day)),
                  diet.mostPieces(),
                  diet.plate().kept()),
              programme.importance()));
    }
    return meals;
  }

  /**
   * The options that would do: n pieces whose mean grams lie in the window, no piece above the
   * animal's largest, fewest pieces first within an item; of a size that is kept to where one of
   * that size would do, else of the next larger one of its kind, else of the next smaller, else of
   * any.
   */
  public static List<Option> options(Meal meal, Collection<Item> items) {
    List<Option> all = allOptions(meal, items);
    return meal.prey().kept().stream()
        .findFirst()
        .flatMap(kept -> nearest(kept, all))
        .map(band -> all.stream().filter(option -> option.band().equals(band)).toList())
        .orElse(all);
  }

  /** The least size of its kind that is not smaller, else the largest; empty where none is. */
  private static Optional<SizeBand> nearest(SizeBand kept, List<Option> options) {
    Comparator<SizeBand> bySize = Comparator.comparingInt(SizeBand::doubling);
    List<SizeBand> bands =
        options.stream()
            .map(Option::band)
            .filter(band -> band.kind().equals(kept.kind()))
            .sorted(bySize)
            .toList();
    return bands.stream()
        .filter(band -> band.doubling() >= kept.doubling())
        .findFirst()
        .or(() -> bands.stream().max(bySize));
  }

  private static List<Option> allOptions(Meal meal, Collection<Item> items) {
    Meal.Prey prey = meal.prey();
    List<Option> options = new ArrayList<>();
    for (Item item : items) {
      if (!prey.kinds().contains(item.kind())
          || item.grams().most().compareTo(prey.largestPiece()) > 0) {
        continue;
      }
      for (int pieces = 1; pieces <= prey.mostPieces(); pieces++) {
        Grams grams = item.grams().mean().times(pieces);
        if (grams.compareTo(prey.window().least()) >= 0
            && grams.compareTo(prey.window().most()) <= 0) {
          options.add(new Option(item, pieces));
        }
      }
    }
    return options;
  }
}
