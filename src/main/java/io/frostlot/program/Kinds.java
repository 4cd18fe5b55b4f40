package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.plan.Alike;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Demands;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Replay;
import io.frostlot.plan.World;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;

/**
 * A world in which meals that nothing but their eaters tells apart are the meals of one demand, so
 * that making, judging and replaying a plan takes time by kinds of meals and not by animals. Where
 * no rule ties the meals of an animal together its plans are those of the whole world, not yet
 * handed out to each, and come to the same.
 *
 * @param world the whole
 * @param merged the world of kinds, or the whole
 * @param isMerged are they not the same?
 */
record Kinds(World world, World merged, boolean isMerged) {
  /** Merged where there are many, and no rule ties the meals of an animal together. */
  static Kinds of(World world) {
    boolean suits =
        ManyKinds.suits(world)
            && Rules.tying(Rules.of(world)).stream().allMatch(rule -> rule.tied().isEmpty());
    return suits ? merging(world) : new Kinds(world, world, false);
  }

  /** Merged, however few there are. */
  static Kinds merging(World world) {
    return new Kinds(world, world.withMeals(merged(world.meals())), true);
  }

  private static Demands merged(Demands meals) {
    return Demands.of(meals.alike().stream().map(Kinds::merged).toList());
  }

  private static Demand merged(Alike alike) {
    Demand first = alike.first();
    Meal meal = first.meal();
    return new Demand(
        new Meal(
            meal.id(), meal.eater(), alike.count(), meal.days(), meal.prey(), meal.importance()),
        first.options(),
        first.tail(),
        first.tailPrice());
  }

  /** A plan of the whole world as one of kinds; what is of no meal stays as it is. */
  Plan merge(Plan plan) {
    if (!isMerged) {
      return plan;
    }
    Map<String, String> kinds = new HashMap<>();
    for (Alike alike : world.meals().alike()) {
      String kind = alike.first().meal().id();
      alike.members().forEach(demand -> kinds.put(demand.meal().id(), kind));
    }
    Map<Feeding, List<Feeding>> together = new LinkedHashMap<>();
    for (Feeding feeding : plan.feedings()) {
      String kind = kinds.getOrDefault(feeding.mealId(), feeding.mealId());
      Feeding alone = new Feeding(kind, feeding.day(), feeding.option(), 0, List.of());
      together.computeIfAbsent(alone, it -> new ArrayList<>()).add(feeding);
    }
    List<Feeding> feedings = new ArrayList<>();
    together.forEach((alone, all) -> feedings.add(sum(alone, all)));
    return new Plan(plan.orders(), plan.lots(), feedings, plan.discards());
  }

  private static Feeding sum(Feeding alone, List<Feeding> all) {
    Map<String, Integer> draws = new LinkedHashMap<>();
    all.forEach(
        it -> it.draws().forEach(draw -> draws.merge(draw.lotId(), draw.pieces(), Integer::sum)));
    return new Feeding(
        alone.mealId(),
        alone.day(),
        alone.option(),
        all.stream().mapToInt(Feeding::meals).sum(),
        draws.entrySet().stream()
            .map(draw -> new Feeding.Draw(draw.getKey(), draw.getValue()))
            .toList());
  }

  /**
   * An answer of kinds with its plan handed out to each animal, judged and replayed again.
   *
   * @throws IllegalStateException where it does not come to the same: a fault of the program
   */
  Answer.WithPlan handedOut(Answer.WithPlan found) {
    if (!isMerged) {
      return found;
    }
    Plan plan = handOut(found.plan().plan());
    CompletableFuture<Boolean> holds =
        CompletableFuture.supplyAsync(() -> Replay.of(world, plan).holds());
    Answer.Judged judged = Rules.judge(world, plan);
    boolean isSame = judged.standing().equals(found.plan().standing());
    if (!isSame || !judged.books().breaches().isEmpty() || !holds.join()) {
      throw new IllegalStateException("a plan of kinds of meals cannot be handed out");
    }
    return found.with(judged);
  }

  private Plan handOut(Plan plan) {
    Map<String, Alike> kinds = new HashMap<>();
    world.meals().alike().forEach(alike -> kinds.put(alike.first().meal().id(), alike));
    List<Mouths.Served> served =
        plan.feedings().stream()
            .map(
                it ->
                    new Mouths.Served(
                        kinds.get(it.mealId()),
                        it.option(),
                        Timeline.day(it.day()),
                        it.meals(),
                        it.draws()))
            .toList();
    return new Plan(plan.orders(), plan.lots(), AmongAlike.of(served), plan.discards());
  }
}
