package io.frostlot.program;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;

/** How the dishes of a {@link Menu} are served, and what the runs of meals come to by that. */
final class Servings {
  private static final int NOT = -1;
  private final Menu menu;
  private final int[] served;
  private final BitSet[] eaters;
  private final BitSet unserved = new BitSet();
  private final RunTotals totals;

  /**
   * Nobody eats.
   *
   * @param items how many there are
   */
  Servings(Menu menu, int items) {
    this.menu = menu;
    served = new int[menu.dishes().size()];
    Arrays.fill(served, NOT);
    unserved.set(0, served.length);
    eaters = IntStream.range(0, items).mapToObj(item -> new BitSet()).toArray(BitSet[]::new);
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
    return menu.dishes().get(dish).ways().get(served[dish]);
  }

  /** Dishes that are served of an item. */
  BitSet eaters(int item) {
    return eaters[item];
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
    Menu.Dish it = menu.dishes().get(dish);
    long milligrams = it.milligrams(way) - it.milligrams(served[dish]);
    long aim = it.aim(way) - it.aim(served[dish]);
    if (isServed(dish)) {
      eaters[way(dish).item()].clear(dish);
    }
    served[dish] = way;
    unserved.set(dish, way == NOT);
    if (isServed(dish)) {
      eaters[way(dish).item()].set(dish);
    }
    double further = 0;
    for (int run : it.runs()) {
      further += totals.add(run, milligrams, aim);
    }
    return further;
  }

  /** By how much runs would be further outside their bands, were a dish served in another way. */
  double further(int dish, int way) {
    Menu.Dish it = menu.dishes().get(dish);
    long milligrams = it.milligrams(way) - it.milligrams(served[dish]);
    long aim = it.aim(way) - it.aim(served[dish]);
    double further = 0;
    for (int run : it.runs()) {
      further += totals.further(run, milligrams, aim);
    }
    return further;
  }
}
