package io.frostlot.program;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** How the dishes of a {@link Menu} are served, and what the runs of meals come to by that. */
final class Servings {
  private static final int NOT = -1;
  private final Menu menu;
  private final int[] served;
  private final BitSet[] eaters;
  private final DayEaters byDay;
  private final Menu.Way[] ways;
  private final BitSet unserved = new BitSet();
  private final BitSet late = new BitSet();
  private final RunTotals totals;

  /**
   * Nobody eats.
   *
   * @param items how many there are
   * @param days of the planning and of the tail
   */
  Servings(Menu menu, int items, int days) {
    this.menu = menu;
    served = new int[menu.dishes().size()];
    Arrays.fill(served, NOT);
    unserved.set(0, served.length);
    eaters = IntStream.range(0, items).mapToObj(item -> new BitSet()).toArray(BitSet[]::new);
    byDay = new DayEaters(items, days);
    ways = new Menu.Way[served.length];
    totals = new RunTotals(menu.runs());
  }

  /** Number of the way in which a dish is served; -1 where it is not. */
  int of(int dish) {
    return served[dish];
  }

  boolean isServed(int dish) {
    return served[dish] != NOT;
  }

  Menu.Way way(int dish) {
    return ways[dish];
  }

  /** Dishes that are served of an item. */
  BitSet eaters(int item) {
    return eaters[item];
  }

  /** Dishes that are served of an item on a day, in no order. */
  int[] eaters(int item, int day) {
    return byDay.of(item, day);
  }

  /** Dishes that are served later than is best. */
  BitSet late() {
    return late;
  }

  BitSet unserved() {
    return unserved;
  }

  /** Percent by which a run is outside its band. */
  double off(int run) {
    return totals.off(run);
  }

  long beyond(int promise) {
    return menu.beyond(promise, served);
  }

  /** Serves a dish in another way; by how much runs are further outside their bands. */
  double serve(int dish, int way) {
    double further = overRuns(dish, way, totals::add);
    if (isServed(dish)) {
      eaters[ways[dish].item()].clear(dish);
      byDay.remove(dish, ways[dish]);
    }
    served[dish] = way;
    unserved.set(dish, way == NOT);
    late.clear(dish);
    if (isServed(dish)) {
      ways[dish] = menu.dishes().get(dish).ways().get(way);
      eaters[ways[dish].item()].set(dish);
      byDay.add(dish, ways[dish]);
      late.set(dish, ways[dish].late() > 0);
    }
    return further;
  }

  /** By how much runs would be further outside their bands, were a dish served in another way. */
  double further(int dish, int way) {
    return overRuns(dish, way, totals::further);
  }

  /** What a run makes of milligrams fed more, and of milligrams intended more. */
  private interface OfARun {
    double further(int run, long milligrams, long target);
  }

  private double overRuns(int dish, int way, OfARun of) {
    Menu.Dish it = menu.dishes().get(dish);
    long milligrams = it.milligrams(way) - it.milligrams(served[dish]);
    long aim = it.aim(way) - it.aim(served[dish]);
    double further = 0;
    for (int run : it.runs()) {
      further += of.further(run, milligrams, aim);
    }
    return further;
  }

  /** Runs that are outside their bands. */
  List<Integer> outside() {
    return IntStream.range(0, menu.runs().size())
        .filter(run -> totals.off(run) > 0)
        .boxed()
        .toList();
  }

  /** Dishes of those of some runs that are outside their bands. */
  Set<Integer> dishesOutside(Collection<Integer> runs) {
    Set<Integer> dishes = new LinkedHashSet<>();
    for (int run : runs) {
      if (totals.off(run) > 0) {
        IntStream.of(menu.runs().get(run).dishes()).forEach(dishes::add);
      }
    }
    return dishes;
  }
}
