package io.frostlot.program;

import io.frostlot.plan.Demand;
import io.frostlot.plan.Plan;
import java.util.Set;
import java.util.TreeSet;

/**
 * Animals whose meals share no class with those of others, since what the program promised for all
 * of them together could not be handed out to each. Shared by those who search.
 */
final class Apart {
  private final Set<String> animals = new TreeSet<>();

  synchronized Set<String> animals() {
    return Set.copyOf(animals);
  }

  synchronized int count() {
    return animals.size();
  }

  /** Takes apart the animals that share a class with one for which this plan falls short. */
  void learn(Program program, Plan plan) {
    Set<String> off = new TreeSet<>();
    program.decisions().tying().forEach(rule -> off.addAll(rule.lacking(plan)));
    for (Decisions.Served served : program.decisions().served()) {
      DemandClass c = served.demandClass();
      Set<String> eaters = new TreeSet<>();
      c.members().stream().map(Demand::meal).forEach(meal -> eaters.add(meal.eater()));
      if (c.isTied() && eaters.size() > 1 && eaters.stream().anyMatch(off::contains)) {
        add(eaters);
      }
    }
  }

  private synchronized void add(Set<String> eaters) {
    animals.addAll(eaters);
  }
}
