package io.frostlot.plan;

import io.frostlot.keeping.Animal;
import io.frostlot.units.Grams;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The runs of meals that the adequacy of a world is about: any four in a row, any eight weeks; all
 * together of an animal that has fewer than four.
 */
public final class MealRuns {
  /** The days over which an animal's food is looked at as a whole. */
  public static final int EIGHT_WEEKS = 56;

  private static final int IN_A_ROW = 4;

  private MealRuns() {}

  /** Planning meals of each animal, by name and day; rows of needs are no animals. */
  public static Map<String, List<Demand>> mealsByAnimal(World world) {
    Map<String, List<Demand>> byAnimal = new TreeMap<>();
    for (Animal animal : world.scenario().collection().animals()) {
      byAnimal.put(animal.name(), new ArrayList<>());
    }
    for (Demand demand : world.demands()) {
      List<Demand> meals = byAnimal.get(demand.meal().eater());
      if (meals != null && !demand.tail()) {
        meals.add(demand);
      }
    }
    byAnimal.values().removeIf(List::isEmpty);
    return byAnimal;
  }

  /** The same of some animals only. */
  public static Map<String, List<Demand>> mealsOf(Set<String> animals, World world) {
    Map<String, List<Demand>> meals = new TreeMap<>();
    if (!animals.isEmpty()) {
      meals.putAll(mealsByAnimal(world));
      meals.keySet().retainAll(animals);
    }
    return meals;
  }

  /** Runs that can break their band; none where adequacy is not asked for. */
  public static List<MealRun> of(World world) {
    List<MealRun> runs = new ArrayList<>();
    Policy.Adequacy adequacy = world.scenario().policy().adequacy();
    if (adequacy.asked()) {
      for (List<Demand> meals : mealsByAnimal(world).values()) {
        List<Demand> possible = possible(meals);
        Set<Part> parts = inARow(possible);
        if (parts.isEmpty() && !possible.isEmpty()) {
          parts.add(new Part(0, possible.size()));
        }
        parts.addAll(inWeeks(possible, world.scenario().planning()));
        for (Part part : parts) {
          List<Demand> some = part.of(possible);
          MealRun run = MealRun.of(some, wanted(MealRun.target(some), adequacy));
          if (run.canBreak()) {
            runs.add(run);
          }
        }
      }
    }
    return runs;
  }

  /** Some meals in a row of a list. */
  private record Part(int from, int before) {
    List<Demand> of(List<Demand> meals) {
      return meals.subList(from, before);
    }
  }

  /** Any four meals in a row of those that some prey would do for. */
  static List<List<Demand>> fourInARow(List<Demand> meals) {
    List<Demand> possible = possible(meals);
    return inARow(possible).stream().map(part -> part.of(possible)).toList();
  }

  private static MealRun.Band wanted(Grams target, Policy.Adequacy adequacy) {
    BigDecimal milligrams = BigDecimal.valueOf(target.milligrams());
    return new MealRun.Band(
        new Grams(
            milligrams
                .multiply(adequacy.least().fraction())
                .setScale(0, RoundingMode.CEILING)
                .longValueExact()),
        new Grams(
            milligrams
                .multiply(adequacy.most().fraction())
                .setScale(0, RoundingMode.FLOOR)
                .longValueExact()));
  }

  private static List<Demand> possible(List<Demand> meals) {
    return meals.stream().filter(demand -> !demand.options().isEmpty()).toList();
  }

  private static Set<Part> inARow(List<Demand> meals) {
    Set<Part> parts = new LinkedHashSet<>();
    for (int i = 0; i + IN_A_ROW <= meals.size(); i++) {
      parts.add(new Part(i, i + IN_A_ROW));
    }
    return parts;
  }

  /** Meals whose best days lie in eight weeks of the planning. */
  private static Set<Part> inWeeks(List<Demand> meals, Period planning) {
    Set<Part> parts = new LinkedHashSet<>();
    for (LocalDate from = planning.from();
        !from.plusDays(EIGHT_WEEKS - 1L).isAfter(planning.to());
        from = from.plusDays(1)) {
      int first = before(meals, from);
      int end = before(meals, from.plusDays(EIGHT_WEEKS));
      if (end > first) {
        parts.add(new Part(first, end));
      }
    }
    return parts;
  }

  /** From the best day of the first of some meals to that of the last. */
  public static Period days(List<Demand> meals) {
    return new Period(
        meals.get(0).meal().days().best(), meals.get(meals.size() - 1).meal().days().best());
  }

  /** How many of an animal's meals, in order of days, have their best day before a day. */
  public static int before(List<Demand> meals, LocalDate day) {
    return (int) meals.stream().filter(d -> d.meal().days().best().isBefore(day)).count();
  }
}
