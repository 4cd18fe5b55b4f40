package io.frostlot.program;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Who eats which of the pieces that are there: a local search over meals and ways to serve them,
 * for the least that is outside the bands of runs of meals. One meal is served in another way from
 * pieces that are spare, or two meals change their items. Every state reached can be followed with
 * the oldest pieces first.
 */
final class Rations {
  // what an unmet meal and a lacking litre weigh beside percent outside a band
  private static final double UNMET_MUST = 1e7;
  private static final double UNMET = 1e5;
  private static final double LACKING = 1e4;

  private static final double BETTER = 1e-7;

  /** Two meals that lie further apart do not change. */
  private static final int DAYS_APART = 42;

  private final List<Meal> meals;
  private final List<Run> runs;
  private final StockLevels stock;
  private final int[][][] levels;
  private final int[][] eaten;
  private final int[] now;
  private final double[] off;
  private final List<List<Integer>> runsOfMeal = new ArrayList<>();
  private final Random random = new Random(20_310_203);

  /**
   * A way to serve a meal.
   *
   * @param shelf where it is taken from, by number
   * @param day counted from the first
   */
  record Way(int shelf, int pieces, int day, double grams) {}

  /**
   * A meal.
   *
   * @param target grams
   * @param now number of the way in which it is served; -1 unmet
   */
  record Meal(List<Way> ways, double target, boolean must, int now) {
    private double weight() {
      return must ? UNMET_MUST : UNMET;
    }
  }

  /**
   * Meals over which the grams fed are held to a band.
   *
   * @param meals by number
   */
  record Run(List<Integer> meals, RunBand band) {}

  /** A meal and another way to serve it. */
  private record Change(int meal, int way) {}

  /**
   * A state to begin with, which can be followed.
   *
   * @param others pieces that others eat, by item and day
   */
  Rations(List<Meal> meals, List<Run> runs, StockLevels stock, int[][] others) {
    this.meals = List.copyOf(meals);
    this.runs = List.copyOf(runs);
    this.stock = stock;
    eaten = Arrays.stream(others).map(int[]::clone).toArray(int[][]::new);
    now = meals.stream().mapToInt(Meal::now).toArray();
    for (int m = 0; m < now.length; m++) {
      runsOfMeal.add(new ArrayList<>());
      eat(m, 1);
    }
    levels = new int[others.length][][];
    for (int shelf = 0; shelf < levels.length; shelf++) {
      levels[shelf] = stock.levels(shelf, eaten[shelf]).orElseThrow();
      stock.count(shelf, levels[shelf], 1);
    }
    off = new double[runs.size()];
    for (int r = 0; r < off.length; r++) {
      for (int meal : runs.get(r).meals()) {
        runsOfMeal.get(meal).add(r);
      }
      off[r] = off(runs.get(r));
    }
  }

  /** Percent outside the bands, in all. */
  double off() {
    return Arrays.stream(off).sum();
  }

  /** The way in which a meal is served; -1 unmet. */
  int way(int meal) {
    return now[meal];
  }

  /**
   * Changes meals until nothing is better; was anything?
   *
   * @param mostTries at most so many looks at a meal or a pair of meals, and some more
   */
  boolean improve(int mostTries) {
    List<Integer> order = new ArrayList<>(IntStream.range(0, now.length).boxed().toList());
    boolean any = false;
    boolean again = true;
    for (int tries = 0; again && tries < mostTries; ) {
      Collections.shuffle(order, random);
      again = false;
      for (int m : order) {
        again |= serveOtherwise(m);
      }
      for (int i = 0; i < order.size() && tries < mostTries; i++) {
        for (int other : order.subList(i + 1, order.size())) {
          again |= exchange(order.get(i), other);
        }
        tries += order.size() - i;
      }
      any |= again;
    }
    return any;
  }

  private boolean serveOtherwise(int meal) {
    boolean better = false;
    for (int way = 0; way < meals.get(meal).ways().size(); way++) {
      better |= way != now[meal] && isBetter(List.of(new Change(meal, way)));
    }
    return better;
  }

  /** Each of two meals is served from the item of the other. */
  private boolean exchange(int a, int b) {
    if (now[a] < 0 || now[b] < 0) {
      return false;
    }
    Way ofA = meals.get(a).ways().get(now[a]);
    Way ofB = meals.get(b).ways().get(now[b]);
    if (ofA.shelf() == ofB.shelf() || Math.abs(ofA.day() - ofB.day()) > DAYS_APART) {
      return false;
    }
    List<Change> others = from(ofA.shelf(), b);
    return from(ofB.shelf(), a).stream()
        .anyMatch(one -> others.stream().anyMatch(other -> isBetter(List.of(one, other))));
  }

  private List<Change> from(int shelf, int meal) {
    List<Way> ways = meals.get(meal).ways();
    return IntStream.range(0, ways.size())
        .filter(way -> ways.get(way).shelf() == shelf)
        .mapToObj(way -> new Change(meal, way))
        .toList();
  }

  /** Makes changes that are for the better and can be followed; else none. */
  private boolean isBetter(List<Change> changes) {
    Set<Integer> touched = new HashSet<>();
    List<Change> back = new ArrayList<>();
    Set<Integer> shelves = new TreeSet<>();
    double gain = 0;
    for (Change change : changes) {
      back.add(new Change(change.meal(), now[change.meal()]));
      touched.addAll(runsOfMeal.get(change.meal()));
      gain += now[change.meal()] < 0 ? meals.get(change.meal()).weight() : 0;
      shelf(change.meal()).ifPresent(shelves::add);
      serve(change);
      shelf(change.meal()).ifPresent(shelves::add);
    }
    for (int r : touched) {
      gain += off[r] - off(runs.get(r));
    }
    if (gain > BETTER - LACKING * stock.lacking() && isStocked(shelves, gain)) {
      touched.forEach(r -> off[r] = off(runs.get(r)));
      return true;
    }
    back.forEach(this::serve);
    return false;
  }

  private OptionalInt shelf(int meal) {
    return now[meal] < 0
        ? OptionalInt.empty()
        : OptionalInt.of(meals.get(meal).ways().get(now[meal]).shelf());
  }

  /** Takes stock of some items anew, where there is enough of them and it is for the better. */
  private boolean isStocked(Set<Integer> shelves, double gain) {
    Map<Integer, int[][]> other = new TreeMap<>();
    for (int shelf : shelves) {
      stock.levels(shelf, eaten[shelf]).ifPresent(found -> other.put(shelf, found));
    }
    if (other.size() < shelves.size()) {
      return false;
    }
    double before = stock.lacking();
    shelves.forEach(shelf -> stock.count(shelf, levels[shelf], -1));
    other.forEach((shelf, found) -> stock.count(shelf, found, 1));
    if (gain + LACKING * (before - stock.lacking()) > BETTER) {
      other.forEach((shelf, found) -> levels[shelf] = found);
      return true;
    }
    other.forEach((shelf, found) -> stock.count(shelf, found, -1));
    shelves.forEach(shelf -> stock.count(shelf, levels[shelf], 1));
    return false;
  }

  private void serve(Change change) {
    eat(change.meal(), -1);
    now[change.meal()] = change.way();
    eat(change.meal(), 1);
  }

  private void eat(int meal, int times) {
    if (now[meal] >= 0) {
      Way way = meals.get(meal).ways().get(now[meal]);
      eaten[way.shelf()][way.day()] += times * way.pieces();
    }
  }

  private double off(Run run) {
    double grams = 0;
    double target = 0;
    for (int m : run.meals()) {
      if (now[m] >= 0) {
        grams += meals.get(m).ways().get(now[m]).grams();
        target += meals.get(m).target();
      }
    }
    return run.band().percentOff(grams, target);
  }
}
