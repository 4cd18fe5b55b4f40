package io.frostlot.plan;

import io.frostlot.units.Grams;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What one animal is fed over the planning days.
 *
 * @param grams of the meals that are met
 * @param meals met, late and unmet
 * @param fourMeals grams of any four meals in a row, in percent of the programme of those that are
 *     met; by day, left out where none is
 */
public record Fed(String animal, Amount grams, Meals meals, List<Double> fourMeals) {
  private static final double NOTABLE = 0.05;

  public Fed {
    fourMeals = List.copyOf(fourMeals);
  }

  /** Planned, and targets of all meals, which is what the growth forecast goes by. */
  public record Amount(Grams planned, Grams target) {
    /** Planned over target; 1 where nothing is due. */
    public double share() {
      return target.equals(Grams.ZERO) ? 1 : planned.toDouble() / target.toDouble();
    }
  }

  /**
   * Numbers of meals; those that are late are met too.
   *
   * @param lateDays by which they are late in all
   */
  public record Meals(long met, long late, long lateDays, long unmet) {}

  /** Is it fed otherwise than its growth was forecast with? */
  public boolean differsFromForecast() {
    return Math.abs(grams.share() - 1) >= NOTABLE;
  }

  /** The least of any four meals in a row, in percent; there must be four. */
  public double leanestFour() {
    return fourMeals.stream().mapToDouble(percent -> percent).min().orElseThrow();
  }

  /** The most of any four meals in a row, in percent; there must be four. */
  public double richestFour() {
    return fourMeals.stream().mapToDouble(percent -> percent).max().orElseThrow();
  }

  /** All animals that have a meal, by name. */
  public static List<Fed> of(World world, Plan plan) {
    Map<String, Feeding> feedings = plan.feedingsByMeal();
    List<Fed> all = new ArrayList<>();
    MealRuns.mealsByAnimal(world).forEach((animal, meals) -> all.add(of(animal, meals, feedings)));
    return all;
  }

  private static Fed of(String animal, List<Demand> meals, Map<String, Feeding> feedings) {
    long late = 0;
    long lateDays = 0;
    long met = 0;
    for (Demand demand : meals) {
      Feeding feeding = feedings.get(demand.meal().id());
      if (feeding != null) {
        met++;
        long daysLate = demand.meal().days().late(feeding.day());
        late += daysLate > 0 ? 1 : 0;
        lateDays += daysLate;
      }
    }
    List<Double> fourMeals = new ArrayList<>();
    for (List<Demand> four : MealRuns.fourInARow(meals)) {
      MealRun.Met part = MealRun.met(four, feedings);
      if (!part.target().equals(Grams.ZERO)) {
        fourMeals.add(100 * part.grams().toDouble() / part.target().toDouble());
      }
    }
    return new Fed(
        animal,
        new Amount(MealRun.met(meals, feedings).grams(), MealRun.target(meals)),
        new Meals(met, late, lateDays, meals.size() - met),
        fourMeals);
  }
}
