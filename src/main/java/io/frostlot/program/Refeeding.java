package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.keeping.Importance;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.MealRun;
import io.frostlot.plan.World;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Feeds the animals of a plan better from the lots that it has (see {@link Rations}), where all
 * that adequacy asks of each animal is too much for the program of the packs. Orders stay as they
 * are. Animals that other rules tie, and needs, are fed as before. What comes of it is judged like
 * any plan, and dropped where it is not better.
 */
final class Refeeding {
  /** About a second's work in a room of forty animals. */
  private static final int MOST_TRIES = 1_000_000;

  private final World world;
  private final List<MealRun> runs;
  private final List<Demand> fedAnew = new ArrayList<>();
  private final Map<String, Integer> numbers = new HashMap<>();

  private Refeeding(World world, Adequacy adequacy, List<Tying> tying) {
    this.world = world;
    Set<String> left = new HashSet<>();
    tying.stream()
        .filter(rule -> !rule.equals(adequacy))
        .forEach(rule -> left.addAll(rule.tied().keySet()));
    runs = adequacy.runs().stream().filter(run -> !left.contains(run.eater())).toList();
    for (MealRun run : runs) {
      for (Demand demand : run.meals()) {
        if (numbers.putIfAbsent(demand.meal().id(), fedAnew.size()) == null) {
          fedAnew.add(demand);
        }
      }
    }
  }

  /** In a world, for all its plans. */
  static Refeeding in(World world) {
    return of(world, adequacy -> true).orElseThrow();
  }

  /** The same where the program of packs is told only a part of what adequacy asks; else empty. */
  static Optional<Refeeding> whereNeeded(World world) {
    return world.scenario().policy().adequacy().asked() && world.joint().keepers().isEmpty()
        ? of(world, Adequacy::isRelaxed)
        : Optional.empty();
  }

  private static Optional<Refeeding> of(World world, Predicate<Adequacy> needed) {
    List<Tying> tying = Rules.tying(Rules.of(world));
    return tying.stream()
        .filter(Adequacy.class::isInstance)
        .map(Adequacy.class::cast)
        .filter(needed)
        .map(adequacy -> new Refeeding(world, adequacy, tying))
        .findFirst();
  }

  /** A plan at least as good as another, with the same orders. */
  Answer.Judged better(Answer.Judged judged) {
    LotsOfPlan lots = new LotsOfPlan(world, judged.plan());
    if (!lots.areInOrder()) {
      return judged;
    }
    Map<String, Feeding> feedings = judged.plan().feedingsByMeal();
    List<List<LotsOfPlan.Serving>> servings =
        fedAnew.stream().map(demand -> servings(demand, feedings, lots)).toList();
    int[][] others = lots.eaten(feeding -> isLeft(feeding, lots));
    Rations rations = new Rations(meals(servings, feedings, lots), runs(), lots.levels(), others);
    if (!rations.improve(MOST_TRIES)) {
      return judged;
    }
    Map<String, LotsOfPlan.Serving> chosen = new HashMap<>();
    for (int m = 0; m < servings.size(); m++) {
      int way = rations.way(m);
      if (way >= 0 && way < servings.get(m).size()) {
        chosen.put(fedAnew.get(m).meal().id(), servings.get(m).get(way));
      }
    }
    return Engine.judge(world, lots.fed(chosen))
        .filter(found -> found.standing().compareTo(judged.standing()) < 0)
        .orElse(judged);
  }

  private boolean isLeft(Feeding feeding, LotsOfPlan lots) {
    return !numbers.containsKey(feeding.mealId()) || lots.serving(feeding).isEmpty();
  }

  /**
   * On the day on which it is served, or any of its days where it is not; none where it is served
   * from several freezers.
   */
  private static List<LotsOfPlan.Serving> servings(
      Demand demand, Map<String, Feeding> feedings, LotsOfPlan lots) {
    Optional<Feeding> now = Optional.ofNullable(feedings.get(demand.meal().id()));
    if (now.isPresent() && lots.serving(now.get()).isEmpty()) {
      return List.of();
    }
    Meal.Days days = demand.meal().days();
    Stream<LocalDate> open =
        now.map(feeding -> Stream.of(feeding.day()))
            .orElseGet(
                () -> new Period(days.earliest(), days.latest()).days().filter(days::contains));
    return open.flatMap(
            day -> demand.options().stream().flatMap(option -> lots.servings(option, day)))
        .toList();
  }

  private List<Rations.Meal> meals(
      List<List<LotsOfPlan.Serving>> servings, Map<String, Feeding> feedings, LotsOfPlan lots) {
    List<Rations.Meal> meals = new ArrayList<>();
    for (int m = 0; m < servings.size(); m++) {
      Demand demand = fedAnew.get(m);
      List<LotsOfPlan.Serving> all = servings.get(m);
      Optional<Feeding> now = Optional.ofNullable(feedings.get(demand.meal().id()));
      List<Rations.Way> ways = new ArrayList<>(all.stream().map(lots::way).toList());
      int served = now.flatMap(lots::serving).map(all::indexOf).orElse(-1);
      if (now.isPresent() && served < 0) {
        served = ways.size();
        ways.add(new Rations.Way(0, 0, 0, now.get().option().grams().toDouble()));
      }
      boolean must = demand.meal().importance() == Importance.MUST;
      meals.add(new Rations.Meal(ways, MealRun.target(demand).toDouble(), must, served));
    }
    return meals;
  }

  private List<Rations.Run> runs() {
    return runs.stream()
        .map(
            run ->
                new Rations.Run(
                    run.meals().stream().map(it -> numbers.get(it.meal().id())).toList(),
                    RunBand.of(run)))
        .toList();
  }
}
