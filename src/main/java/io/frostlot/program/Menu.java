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
import java.util.function.ToIntBiFunction;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/** Meals of a world and the ways to serve them, by number; what animals are promised with them. */
final class Menu {
  private final World world;
  private final List<Dish> dishes = new ArrayList<>();
  private final List<Run> runs = new ArrayList<>();
  private final List<Promise> promises = new ArrayList<>();
  private final List<BitSet> eating = new ArrayList<>();
  private final List<BitSet> besides = new ArrayList<>();
  private final BitSet planned = new BitSet();

  /**
   * A way to serve a meal.
   *
   * @param item by number
   * @param day counted from the first
   * @param late what is charged for it
   */
  record Way(int item, Option option, int day, long milligrams, double late) {
    int pieces() {
      return option.pieces();
    }
  }

  /**
   * One meal of a demand.
   *
   * @param items of its ways
   * @param target milligrams
   * @param unmet what it counts among the unmet
   * @param bought what it costs when it is bought in the tail
   * @param runs whose grams it counts in
   * @param promises animals to which other rules promise something, at most one
   */
  record Dish(
      Demand demand,
      List<Way> ways,
      BitSet items,
      long target,
      double unmet,
      double bought,
      List<Integer> runs,
      List<Integer> promises) {
    boolean isOfTail() {
      return demand.tail();
    }

    /** Grams fed by a way, in milligrams; -1 is none. */
    long milligrams(int way) {
      return way < 0 ? 0 : ways.get(way).milligrams();
    }

    /** Its target where it is served, else nothing. */
    long aim(int way) {
      return way < 0 ? 0 : target;
    }

    /** How much is lost where it is not served. */
    double lost() {
      return Amounts.MUST * unmet + bought;
    }

    boolean isOfSameEater(Dish other) {
      return demand.meal().eater().equals(other.demand.meal().eater());
    }

    boolean eats(BitSet some) {
      return items.intersects(some);
    }
  }

  /** Meals over which the grams fed are held to a band. */
  record Run(int[] dishes, RunBand band) {}

  /** What meals that are served in the same ways have in common. */
  private record Choices(String keeper, List<Option> options, Meal.Days days) {}

  /** An animal, its meals and a rule that counts by how much they fall short. */
  private record Promise(Counted rule, String animal, List<Integer> dishes) {}

  /**
   * Of a world.
   *
   * @param tying its rules that tie the meals of one animal together
   * @param number of the ware that an option of a meal is of
   */
  Menu(World world, List<Tying> tying, ToIntBiFunction<Demand, Option> number) {
    this.world = world;
    Map<String, Integer> numbers = new HashMap<>();
    Map<Choices, List<Way>> known = new HashMap<>();
    for (Demand demand : world.demands()) {
      List<Way> ways =
          known.computeIfAbsent(
              new Choices(world.joint().keeperOf(demand), demand.options(), demand.meal().days()),
              it -> ways(it, option -> number.applyAsInt(demand, option)));
      BitSet items = new BitSet();
      ways.forEach(way -> items.set(way.item()));
      numbers.put(demand.meal().id(), dishes.size());
      long target = MealRun.target(demand).milligrams();
      double unmet = demand.tail() ? 0 : isMust(demand) ? Amounts.MUST : 1;
      double bought = demand.tailPrice().toDouble();
      for (int n = 0; n < demand.meal().count(); n++) {
        List<Integer> runsOf = new ArrayList<>();
        dishes.add(new Dish(demand, ways, items, target, unmet, bought, runsOf, new ArrayList<>()));
      }
    }
    for (int dish = 0; dish < dishes.size(); dish++) {
      eat(dish, dishes.get(dish).items());
      planned.set(dish, !dishes.get(dish).isOfTail() && !dishes.get(dish).ways().isEmpty());
    }
    for (Tying rule : tying) {
      if (rule instanceof Adequacy adequacy) {
        adequacy.runs().forEach(run -> add(run, numbers));
      } else if (rule instanceof Counted counted) {
        counted.tied().forEach((animal, meals) -> add(counted, animal, meals, numbers));
      }
    }
  }

  private static boolean isMust(Demand demand) {
    return demand.meal().importance() == Importance.MUST;
  }

  private void eat(int dish, BitSet items) {
    while (eating.size() < items.length()) {
      eating.add(new BitSet());
      besides.add(new BitSet());
    }
    items.stream().forEach(item -> eating.get(item).set(dish));
    items.stream().forEach(item -> besides.get(item).or(items));
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
          long milligrams = option.grams().milligrams();
          ways.add(new Way(number.applyAsInt(option), option, day - first, milligrams, late));
        }
      }
    }
    return List.copyOf(ways);
  }

  List<Dish> dishes() {
    return dishes;
  }

  /** Dishes of the planning that could be served. */
  BitSet planned() {
    return planned;
  }

  /** Dishes that could be of some items. */
  BitSet eating(BitSet items) {
    return of(eating, items);
  }

  /** Items that dishes could be of which could be of some items. */
  BitSet besides(BitSet items) {
    return of(besides, items);
  }

  private static BitSet of(List<BitSet> byItem, BitSet items) {
    BitSet all = new BitSet();
    for (int item = items.nextSetBit(0); item >= 0; item = items.nextSetBit(item + 1)) {
      if (item < byItem.size()) {
        all.or(byItem.get(item));
      }
    }
    return all;
  }

  List<Run> runs() {
    return runs;
  }

  int promises() {
    return promises.size();
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
