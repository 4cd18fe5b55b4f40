package io.frostlot.program;

/** Goes once through the days of an {@link ItemStock}. */
final class StockWalk {
  private final LookDays look;
  private final ItemStock.Batch[] batches;
  private final int[] counts;
  private final int[] byFrom;
  private final int[] left;
  private int[][] lying = new int[0][];
  private int lies;
  private int recent;
  private int come;
  private int old;
  private int gone;
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
    for (int b = 0; b < counts.length; b++) {
      int first = Math.max(0, batches[b].earliest());
      nights += (long) counts[b] * nights(first, batches[b].until());
    }
  }

  /** Planning nights from a day on. */
  private int nights(int from, int until) {
    return Math.max(0, Math.min(until, look.lastPlanned()) - from + 1);
  }

  ItemStock.Course over(int[] eaten, ItemStock.Looked on, int freezers) {
    int[] checks = on.checks();
    int[] comings = on.comings();
    lying = new int[freezers][checks.length];
    int[] eatenBefore = new int[comings.length];
    int[] leftBefore = new int[comings.length];
    int[] there = new int[eaten.length];
    int uncovered = 0;
    int all = 0;
    int check = 0;
    int coming = 0;
    int busy = 0;
    for (int day = 0; day < eaten.length; day++) {
      if (day < busy && eaten[day] == 0) {
        there[day] = lies;
        continue;
      }
      if (day == day(coming, comings, look.comings())) {
        eatenBefore[coming] = all;
        leftBefore[coming++] = there[day - 1];
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
      there[day] = lies;
      if (isChecked && look.afterMeals()) {
        count(day, check);
      }
      check += isChecked ? 1 : 0;
      uncovered += day <= look.lastPlanned() ? Math.max(0, recent - lies) : 0;
      busy = Math.min(day(coming, comings, look.comings()), day(check, checks, look.checks()));
      busy = Math.min(busy, next(day));
    }
    return new ItemStock.Course(-1, nights, uncovered, on, lying, eatenBefore, leftBefore, there);
  }

  private static int day(int next, int[] places, int[] days) {
    return next < places.length ? days[places[next]] : Integer.MAX_VALUE;
  }

  /** The next day on which something may happen but that meals eat. */
  private int next(int day) {
    if (recent > 0) {
      return day + 1;
    }
    int comes = come < byFrom.length ? batches[byFrom[come]].from() : Integer.MAX_VALUE;
    int goes = gone < left.length ? batches[gone].until() + 1 : Integer.MAX_VALUE;
    return Math.min(comes, goes);
  }

  /** What is past its use-by leaves, what comes can be eaten, some of it is no longer recent. */
  private void begin(int day) {
    while (gone < left.length && batches[gone].until() < day) {
      lies -= batches[gone].from() < day ? left[gone] : 0;
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
    for (int b = gone; needed > 0; b++) {
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
      }
    }
  }
}
