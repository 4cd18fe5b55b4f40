package io.frostlot.program;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;

/** Meals of a {@link Trial} exchange their food, where that brings runs nearer to their bands. */
record Exchanging(Trial trial, Refilling refilling, Chance chance) {
  private static final int PARTNERS = 40;
  private static final double MUCH = 0.999;

  /** Days between meals that exchange. */
  private static final int DAYS_APART = 42;

  private List<Menu.Dish> dishes() {
    return trial.menu().dishes();
  }

  /** All runs again and again, as long as that brings them much nearer. */
  void evenOutAll() {
    double before = Double.POSITIVE_INFINITY;
    while (refilling.weight() < MUCH * before) {
      before = refilling.weight();
      evenOut(trial.servings().outside(), Integer.MAX_VALUE);
    }
  }

  /** Meals of runs outside their bands are served otherwise or change with others. */
  void evenOut(Collection<Integer> runs, int mostPairs) {
    int left = mostPairs;
    for (int dish : chance.shuffled(trial.servings().dishesOutside(runs))) {
      refilling.serveBest(dish, Refilling.ANY);
      List<Integer> partners = trial.isServed(dish) && left > 0 ? partners(dish) : List.of();
      left -= partners.size();
      partners.forEach(other -> exchange(dish, other));
    }
  }

  /** Dishes served of something else that could each be of the other's item. */
  private List<Integer> partners(int dish) {
    int item = trial.way(dish).item();
    int day = trial.way(dish).day();
    List<Integer> partners = new ArrayList<>();
    BitSet items = dishes().get(dish).items();
    for (int i = items.nextSetBit(0); i >= 0; i = items.nextSetBit(i + 1)) {
      BitSet eaters = trial.servings().eaters(i);
      for (int d = i == item ? -1 : eaters.nextSetBit(0); d >= 0; d = eaters.nextSetBit(d + 1)) {
        if (dishes().get(d).items().get(item) && Math.abs(trial.way(d).day() - day) <= DAYS_APART) {
          partners.add(d);
        }
      }
    }
    return chance.some(PARTNERS, partners);
  }

  /** Each of two dishes is served of the item of the other, where that weighs less. */
  private void exchange(int a, int b) {
    if (trial.way(a).item() == trial.way(b).item()) {
      return;
    }
    double now = refilling.weight();
    int newA = way(a, trial.way(b).item());
    int newB = way(b, trial.way(a).item());
    if (newA >= 0
        && newB >= 0
        && refilling.outlook().mayBeBelow(now - Refilling.BETTER, now, a, newA, b, newB)) {
      refilling.isBetter(
          () -> {
            trial.serve(a, newA);
            trial.serve(b, newB);
            refilling.weigh();
          });
    }
  }

  /** A way to serve a dish of an item on the same day; -1 where there is none. */
  private int way(int dish, int item) {
    List<Menu.Way> ways = dishes().get(dish).ways();
    int day = trial.way(dish).day();
    for (int w = 0; w < ways.size(); w++) {
      if (ways.get(w).item() == item && ways.get(w).day() == day) {
        return w;
      }
    }
    return -1;
  }
}
