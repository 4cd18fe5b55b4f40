package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.keeping.Importance;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.MealRun;
import io.frostlot.plan.World;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/** Meals of a world and the ways to serve them, by number; what animals are promised with them. */
final class Menu {
  private final World world;
  private final List<Dish> dishes = new ArrayList<>();
  private final List<Run> runs = new ArrayList<>();
  private final List<Promise> promises = new ArrayList<>();

  /**
   * A way to serve a meal.
   *
   * @param item by number
   * @param day counted from the first
   * @param late what is charged for it
   */
  record Way(int item, Option option, int day, double grams, double late) {
    int pieces() {
      return option.pieces();
    }
  }

  /**
   * One meal of a demand.
   *
   * @param items of its ways
   * @param target grams
   * @param runs whose grams it counts in
   * @param promises animals to which other rules promise something, at most one
   */
  record Dish(
      Demand demand,
      List<Way> ways,
      BitSet items,
      double target,
      List<Integer> runs,
      List<Integer> promises) {
    boolean isOfTail() {
      return demand.tail();
    }

    /** What it counts among the unmet. */
    double unmet() {
      boolean must = demand.meal().importance() == Importance.MUST;
      return isOfTail() ? 0 : must ? Amounts.MUST : 1;
    }

    /** What it costs when it is bought in the tail. */
    double bought() {
      return demand.tailPrice().toDouble();
    }

    boolean eats(BitSet some) {
      return items.intersects(some);
    }
  }

  /** Meals over which the grams fed are held to a band. */
  record Run(int[] dishes, RunBand band) {}

  /** What meals that are served in the same ways have in common. */
  private record Choices(List<Option> options, Meal.Days days) {}

  /** An animal, its meals and a rule that counts by how much they fall short. */
  private record Promise(Counted rule, String animal, List<Integer> dishes) {}

  /**
   * Of a world.
   *
   * @param number of an item
   */
  Menu(World world, ToIntFunction<Option> number) {
    this.world = world;
    Map<String, Integer> numbers = new HashMap<>();
    Map<Choices, List<Way>> known = new HashMap<>();
    for (Demand demand : world.demands()) {
      List<Way> ways =
          known.computeIfAbsent(
              new Choices(demand.options(), demand.meal().days()), it -> ways(it, number));
      BitSet items = new BitSet();
      ways.forEach(way -> items.set(way.item()));
      numbers.put(demand.meal().id(), dishes.size());
      double target = MealRun.target(demand).toDouble();
      for (int n = 0; n < demand.meal().count(); n++) {
        dishes.add(new Dish(demand, ways, items, target, new ArrayList<>(), new ArrayList<>()));
      }
    }
    for (Tying rule : Rules.tying(Rules.of(world))) {
      if (rule instanceof Adequacy adequacy) {
        adequacy.runs().forEach(run -> add(run, numbers));
      } else if (rule instanceof Counted counted) {
        counted.tied().forEach((animal, meals) -> add(counted, animal, meals, numbers));
      }
    }
  }

  private void add(MealRun run, Map<String, Integer> numbers) {
    int[] of = run.meals().stream().mapToInt(it -> numbers.get(it.meal().id())).toArray();
    IntStream.of(of).forEach(dish -> dishes.get(dish).runs().add(runs.size()));
    runs.add(new Run(of, RunBand.of(run)));
  }

  private void add(Counted rule, String animal, List<Demand> meals, Map<String, Integer> numbers) {
    List<Integer> own = meals.stream().map(it -> numbers.get(it.meal().id())).toList();
    own.forEach(dish -> dishes.get(dish).promises().add(promises.size()));
    promises.add(new Promise(rule, animal, own));
  }

  private List<Way> ways(Choices choices, ToIntFunction<Option> number) {
    Meal.Days days = choices.days();
    int first = Timeline.day(world.scenario().planning().from());
    int last = Timeline.lastDay(world);
    double perDay = world.scenario().policy().charges().lateMeal().toDouble();
    List<Way> ways = new ArrayList<>();
    for (LocalDate date : new Period(days.earliest(), days.latest()).days().toList()) {
      int day = Timeline.day(date);
      for (Option option : choices.options()) {
        if (days.contains(date) && day >= first && day <= last) {
          double late = perDay * days.late(date);
          double grams = option.grams().toDouble();
          ways.add(new Way(number.applyAsInt(option), option, day - first, grams, late));
        }
      }
    }
    return List.copyOf(ways);
  }

  List<Dish> dishes() {
    return dishes;
  }

  List<Run> runs() {
    return runs;
  }

  int promises() {
    return promises.size();
  }

  /** Percent by which a run is outside its band, when dishes are served so; -1 is unserved. */
  double off(int number, int[] served) {
    Run run = runs.get(number);
    double grams = 0;
    double target = 0;
    for (int d : run.dishes()) {
      if (served[d] >= 0) {
        grams += dishes.get(d).ways().get(served[d]).grams();
        target += dishes.get(d).target();
      }
    }
    return run.band().percentOff(grams, target);
  }

  /** By how much the meals of an animal fall short of what a rule promises it. */
  long beyond(int number, int[] served) {
    Promise promise = promises.get(number);
    Map<String, Feeding> feedings = new TreeMap<>();
    for (int d : promise.dishes()) {
      if (served[d] >= 0) {
        Way way = dishes.get(d).ways().get(served[d]);
        String id = dishes.get(d).demand().meal().id();
        LocalDate day = world.scenario().planning().from().plusDays(way.day());
        feedings.put(id, new Feeding(id, day, way.option(), 1, List.of()));
      }
    }
    return promise.rule().beyond(promise.animal(), feedings);
  }
}
