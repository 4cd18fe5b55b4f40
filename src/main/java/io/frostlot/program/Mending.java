package io.frostlot.program;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Makes good what a change of packs has left behind. */
record Mending(
    Menu menu,
    Trial trial,
    Refilling refilling,
    Exchanging exchanging,
    Augmenting augmenting,
    Shopping shopping,
    Chance chance) {
  private static final int PAIRS = 1000;
  private static final int MOST_TRIMMED = 6;
  private static final int MOST_PASSED_ON = 3;

  /** Where there are more or fewer of some items: who lacks them is fed otherwise, see below. */
  void mend(BitSet items) {
    mend(shopping.release(items), items);
  }

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
    if (menu.runs().isEmpty()) {
      passOn(items);
    }
    BitSet late = menu.eating(items);
    late.and(trial.servings().late());
    late.stream().forEach(refilling::serveSooner);
    Set<Integer> runs = new LinkedHashSet<>();
    lost.forEach(dish -> runs.addAll(menu.dishes().get(dish).runs()));
    exchanging.evenOut(runs, PAIRS);
  }

  /**
   * Those that lose most are fed with what others pass on; where runs are to be evened out it is
   * too slow.
   */
  private void passOn(BitSet items) {
    refilling.mostLost(refilling.unserved(items), MOST_PASSED_ON).forEach(augmenting::feed);
  }

  /** Can a dish be served after all? Else the change is of no use. */
  private boolean isFed(int dish, List<Integer> lost) {
    if (trial.isServed(dish) || augmenting.feed(dish) || menu.dishes().get(dish).isOfTail()) {
      return true;
    }
    shopping.buyFor(dish, lost);
    return trial.isServed(dish);
  }

  /** Gives back packs that are no longer worth it, now that there is more of some items. */
  void trim(Shopping.Row bought) {
    BitSet instead = menu.besides(shopping.items(bought));
    List<Shopping.Row> rows = new ArrayList<>(shopping.bought());
    rows.removeIf(row -> row.equals(bought) || !shopping.items(row).intersects(instead));
    for (Shopping.Row row : chance.some(MOST_TRIMMED, rows)) {
      boolean again = true;
      while (again && shopping.count(row) > 0) {
        again = refilling.isBetter(() -> giveBack(row));
      }
    }
  }

  private void giveBack(Shopping.Row row) {
    shopping.giveBack(row, 1);
    List<Integer> lost = shopping.release(shopping.items(row));
    if (refilling.isPossible()) {
      refilling.refill(lost);
    }
  }
}
