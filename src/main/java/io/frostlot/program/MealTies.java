package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.keeping.Importance;
import io.frostlot.plan.Demand;
import io.frostlot.plan.World;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Which meals must be told apart since a rule ties those of one animal together: by its place among
 * the animal's meals, and by the animal, unless others are fed exactly like it.
 */
final class MealTies {
  /** Of a meal that nothing ties to others. */
  static final Tie NONE = new Tie("", 0);

  private final Map<String, Tie> byMeal = new HashMap<>();

  /**
   * What keeps meals apart.
   *
   * @param animal the first of those fed like it
   * @param place of the meal in the order of days
   */
  record Tie(String animal, int place) {}

  private record Likeness(Meal.Days days, Meal.Prey prey, Importance importance, List<Option> all) {
    static Likeness of(Demand demand) {
      Meal meal = demand.meal();
      return new Likeness(meal.days(), meal.prey(), meal.importance(), demand.options());
    }
  }

  /**
   * The ties of a world.
   *
   * @param apart animals that share with no other
   */
  MealTies(World world, List<Tying> rules, Set<String> apart) {
    Map<String, Set<String>> tied = new HashMap<>();
    for (Tying rule : rules) {
      rule.tied()
          .forEach(
              (animal, meals) ->
                  meals.forEach(
                      demand ->
                          tied.computeIfAbsent(animal, name -> new HashSet<>())
                              .add(demand.meal().id())));
    }
    Map<String, List<Demand>> byAnimal = new TreeMap<>();
    for (Demand demand : tied.isEmpty() ? List.<Demand>of() : world.demands()) {
      String eater = demand.meal().eater();
      if (tied.getOrDefault(eater, Set.of()).contains(demand.meal().id())) {
        byAnimal.computeIfAbsent(eater, name -> new ArrayList<>()).add(demand);
      }
    }
    Map<List<Object>, String> first = new HashMap<>();
    byAnimal.forEach(
        (animal, meals) -> {
          List<Object> fed = new ArrayList<>(meals.stream().map(Likeness::of).toList());
          rules.forEach(rule -> fed.add(rule.wish(animal)));
          String name = apart.contains(animal) ? animal : first.computeIfAbsent(fed, f -> animal);
          for (int i = 0; i < meals.size(); i++) {
            byMeal.put(meals.get(i).meal().id(), new Tie(name, i));
          }
        });
  }

  /** Is no meal tied to another? */
  boolean areNone() {
    return byMeal.isEmpty();
  }

  Tie of(Demand demand) {
    return byMeal.getOrDefault(demand.meal().id(), NONE);
  }
}
