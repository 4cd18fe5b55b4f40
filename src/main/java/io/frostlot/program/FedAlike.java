package io.frostlot.program;

import io.frostlot.plan.Demand;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Animals that the program cannot tell apart, since all their meals share classes.
 *
 * @param animals at least one
 * @param demands meals of the first of them
 * @param meals the service of each of these, for all animals together
 */
record FedAlike(List<String> animals, List<Demand> demands, List<Decisions.Served> meals) {
  FedAlike {
    animals = List.copyOf(animals);
    demands = List.copyOf(demands);
    meals = List.copyOf(meals);
  }

  /** How many. */
  int count() {
    return animals.size();
  }

  /** The animals of some meals. */
  static List<FedAlike> of(Program program, Map<String, List<Demand>> byAnimal) {
    if (byAnimal.isEmpty()) {
      return List.of();
    }
    Map<String, Decisions.Served> servedByMeal = program.decisions().servedByMeal();
    Map<List<Var>, List<String>> alike = new LinkedHashMap<>();
    Map<String, List<Decisions.Served>> meals = new HashMap<>();
    byAnimal.forEach(
        (animal, demands) -> {
          List<Decisions.Served> served =
              demands.stream().map(demand -> servedByMeal.get(demand.meal().id())).toList();
          meals.put(animal, served);
          List<Var> missed = served.stream().map(Decisions.Served::missed).toList();
          alike.computeIfAbsent(missed, all -> new ArrayList<>()).add(animal);
        });
    return alike.values().stream()
        .map(
            animals ->
                new FedAlike(animals, byAnimal.get(animals.get(0)), meals.get(animals.get(0))))
        .toList();
  }
}
