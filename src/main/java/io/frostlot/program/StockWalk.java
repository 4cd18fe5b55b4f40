package io.frostlot.program;

import java.util.Arrays;
import java.util.BitSet;

/** Goes once through the days of an {@link ItemStock} on which something may change. */
final class StockWalk {
  private final LookDays look;
  private final ItemStock.Batch[] batches;
  private final int[] counts;
  private final int[] byFrom;
  private final int[] left;
  private final Steps steps;
  private int[][] lying = new int[0][];
  private int lies;
  private int recent;
  private int come;
  private int old;
  private int gone;
  private int first;
  private int expired;
  private long nights;

  /**
   * Before the first day.
   *
   * @param batches those that go past their use-by first come first
   * @param counts pieces of each
   * @param byFrom their numbers, those that can be eaten first come first
   */
  StockWalk(LookDays look, ItemStock.Batch[] batches, int[] counts, int[] byFrom) {
    this.look = look;
    this.batches = batches;
    this.counts = counts;
    this.byFrom = byFrom;
    left = counts.clone();
    steps = new Steps();
    for (int b = 0; b < counts.length; b++) {
      int from = Math.max(0, batches[b].earliest());
      nights += (long) counts[b] * nights(from, batches[b].until());
    }
  }

  /** Planning nights from a day on. */
  private int nights(int from, int until) {
    return Math.max(0, Math.min(until, look.lastPlanned()) - from + 1);
  }

  /**
   * All days, up to one on which there are too few to eat.
   *
   * @param eaten pieces on each day
   * @param meals days on which some are
   */
  ItemStock.Course over(int[] eaten, BitSet meals, ItemStock.Looked on, int places) {
    int[] checks = on.checks();
    int[] comings = on.comings();
    lying = new int[places][checks.length];
    int[] eatenBefore = new int[comings.length];
    int[] leftBefore = new int[comings.length];
    int uncovered = 0;
    int all = 0;
    int check = 0;
    int coming = 0;
    int day = 0;
    while (day < eaten.length) {
      if (day == day(coming, comings, look.comings())) {
        eatenBefore[coming] = all;
        leftBefore[coming++] = lies;
      }
      begin(day);
      boolean isChecked = day == day(check, checks, look.checks());
      if (isChecked && !look.afterMeals()) {
        count(day, check);
      }
      if (eaten[day] > lies) {
        return ItemStock.Course.lacking(day);
      }
      eat(day, eaten[day]);
      all += eaten[day];
      if (isChecked && look.afterMeals()) {
        count(day, check);
      }
      check += isChecked ? 1 : 0;
      steps.add(day, lies, expired);
      int next = Math.min(day(coming, comings, look.comings()), day(check, checks, look.checks()));
      int meal = meals.nextSetBit(day + 1);
      next = Math.min(meal < 0 ? eaten.length : meal, Math.min(next, next()));
      uncovered += Math.max(0, recent - lies) * Math.max(0, nights(day, next - 1));
      day = next;
    }
    return new ItemStock.Course(
        -1, nights, uncovered, on, lying, eatenBefore, leftBefore, steps.spare(eaten.length));
  }

  private static int day(int next, int[] places, int[] days) {
    return next < places.length ? days[places[next]] : Integer.MAX_VALUE;
  }

  /** The next day on which something comes, goes, or is no longer recent. */
  private int next() {
    int comes = come < byFrom.length ? batches[byFrom[come]].from() : Integer.MAX_VALUE;
    int goes = gone < left.length ? batches[gone].until() + 1 : Integer.MAX_VALUE;
    int settles = old < come ? batches[byFrom[old]].from() + look.coverDays() : Integer.MAX_VALUE;
    return Math.min(comes, Math.min(goes, settles));
  }

  /** What is past its use-by leaves, what comes can be eaten, some of it is no longer recent. */
  private void begin(int day) {
    while (gone < left.length && batches[gone].until() < day) {
      int past = batches[gone].from() < day ? left[gone] : 0;
      lies -= past;
      expired += past;
      left[gone++] = 0;
    }
    for (; come < byFrom.length && batches[byFrom[come]].from() <= day; come++) {
      lies += left[byFrom[come]];
      recent += fresh(byFrom[come]);
    }
    int since = day - look.coverDays();
    for (; old < come && batches[byFrom[old]].from() <= since; old++) {
      recent -= fresh(byFrom[old]);
    }
  }

  private int fresh(int batch) {
    return batches[batch].fresh() ? counts[batch] : 0;
  }

  private void eat(int day, int pieces) {
    int needed = pieces;
    while (first < left.length && left[first] == 0) {
      first++;
    }
    for (int b = Math.max(gone, first); needed > 0; b++) {
      if (left[b] > 0 && batches[b].from() <= day) {
        int taken = Math.min(needed, left[b]);
        left[b] -= taken;
        needed -= taken;
        nights -= (long) taken * nights(day, batches[b].until());
      }
    }
    lies -= pieces;
  }

  private void count(int day, int check) {
    for (int b = 0; b < left.length; b++) {
      if (batches[b].earliest() <= day && day <= batches[b].until()) {
        lying[batches[b].freezer()][check] += left[b];
      } else if (batches[b].isWaiting(day)) {
        lying[lying.length - 1][check] += counts[b];
      }
    }
  }

  /** Days from which on there are so many pieces after the meals, and so many have expired. */
  private static final class Steps {
    private int[] days = new int[32];
    private int[] there = new int[32];
    private int[] expired = new int[32];
    private int size;

    void add(int day, int pieces, int past) {
      if (size == days.length) {
        days = Arrays.copyOf(days, 2 * size);
        there = Arrays.copyOf(there, 2 * size);
        expired = Arrays.copyOf(expired, 2 * size);
      }
      days[size] = day;
      there[size] = pieces;
      expired[size++] = past;
    }

    /**
     * Where more is eaten on a day, on a later one so many pieces fewer are there, but for those
     * that would have gone past their use-by.
     */
    ItemStock.Spare spare(int until) {
      int[] on = new int[until];
      int least = Integer.MAX_VALUE;
      int most = 0;
      int next = until;
      for (int k = size - 1; k >= 0; k--) {
        least = Math.min(least, there[k] + expired[k]);
        Arrays.fill(on, days[k], next, least - expired[k]);
        most = Math.max(most, least - expired[k]);
        next = days[k];
      }
      return new ItemStock.Spare(on, most);
    }
  }
}
