package io.frostlot.program;

import java.util.Arrays;

/** Dishes that are served of each item on each day, in no order. */
final class DayEaters {
  private static final int[] NONE = new int[0];
  private final int[][][] dishes;
  private final int[][] counts;

  /**
   * Nobody eats.
   *
   * @param days counted from the first
   */
  DayEaters(int items, int days) {
    dishes = new int[items][days][];
    counts = new int[items][days];
    for (int[][] ofItem : dishes) {
      Arrays.fill(ofItem, NONE);
    }
  }

  void add(int dish, Menu.Way way) {
    int[] here = dishes[way.item()][way.day()];
    int count = counts[way.item()][way.day()]++;
    if (count == here.length) {
      here = Arrays.copyOf(here, 2 * count + 2);
      dishes[way.item()][way.day()] = here;
    }
    here[count] = dish;
  }

  void remove(int dish, Menu.Way way) {
    int[] here = dishes[way.item()][way.day()];
    int last = --counts[way.item()][way.day()];
    for (int i = 0; i < last; i++) {
      if (here[i] == dish) {
        here[i] = here[last];
        return;
      }
    }
  }

  /** Each once. */
  int[] of(int item, int day) {
    return Arrays.copyOf(dishes[item][day], counts[item][day]);
  }
}
