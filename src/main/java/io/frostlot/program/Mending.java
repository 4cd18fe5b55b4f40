package io.frostlot.program;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/** Makes good what a change of packs has left behind. */
record Mending(Menu menu, Trial trial, Refilling refilling, Shopping shopping, Random random) {
  private static final int PAIRS = 200;
  private static final int MOST_TRIMMED = 6;
  private static final double BETTER = 1e-6;

  /**
   * Feeds those who lost their food, buys for those who are left, and evens out.
   *
   * @param items that there are more or fewer of
   */
  void mend(List<Integer> lost, BitSet items) {
    if (!refilling.isPossible()) {
      return;
    }
    refilling.refill(lost);
    if (!lost.stream().allMatch(dish -> isFed(dish, lost))) {
      return;
    }
    refilling.refill(refilling.unserved(items));
    Set<Integer> runs = new LinkedHashSet<>();
    lost.forEach(dish -> runs.addAll(menu.dishes().get(dish).runs()));
    refilling.evenOut(runs, PAIRS);
  }

  /** Can a dish be served after all? Else the change is of no use. */
  private boolean isFed(int dish, List<Integer> lost) {
    if (trial.isServed(dish)
        || menu.dishes().get(dish).isOfTail()
        || refilling.takeFromAnother(dish)) {
      return true;
    }
    shopping.buyFor(dish, lost);
    return trial.isServed(dish);
  }

  /** Gives back packs that are no longer worth it, now that there is more of some items. */
  void trim(Shopping.Row bought) {
    BitSet instead = new BitSet();
    BitSet items = shopping.items(bought);
    menu.dishes().stream().filter(it -> it.eats(items)).forEach(it -> instead.or(it.items()));
    List<Shopping.Row> rows = new ArrayList<>(shopping.bought());
    rows.removeIf(row -> row.equals(bought) || !shopping.items(row).intersects(instead));
    Collections.shuffle(rows, random);
    for (Shopping.Row row : rows.subList(0, Math.min(MOST_TRIMMED, rows.size()))) {
      boolean worse = false;
      while (!worse && shopping.count(row) > 0) {
        int mark = trial.mark();
        double before = refilling.weight();
        shopping.giveBack(row, 1);
        List<Integer> lost = shopping.release(shopping.items(row));
        if (refilling.isPossible()) {
          refilling.refill(lost);
        }
        worse = refilling.weight() > before - BETTER;
        if (worse) {
          refilling.backTo(mark, before);
        }
      }
    }
  }
}
