package io.frostlot.oracle;

import io.frostlot.plan.Policy;
import io.frostlot.supply.Slot;
import java.time.YearMonth;
import java.util.List;
import java.util.stream.Stream;

/**
 * What invoices should come to at most, order by order and month by month; the counts of a state
 * remember what was spent in each month, in thousandths.
 *
 * <p>An amount above its budget falls short by that part of the budget in percent, rounded up; a
 * thousandth of a percent is nothing.
 */
final class Spending {
  private static final long PER_COUNT = 1000;
  private final Policy.Budget budget;
  private final int first;
  private final List<YearMonth> months;

  /**
   * The budget of a tiny world.
   *
   * @param first of its counts in a state
   */
  Spending(Tiny tiny, int first) {
    this.first = first;
    budget = tiny.world.scenario().policy().ordering().budget();
    months =
        budget.perMonth().isZero()
            ? List.of()
            : Stream.concat(Stream.of(tiny.date(0)), tiny.world.slots().stream().map(Slot::ordered))
                .map(YearMonth::from)
                .distinct()
                .toList();
  }

  /** Counts that it needs. */
  int size() {
    return months.size();
  }

  /** What falls short before anything is ordered. */
  Score before() {
    return new Score(0, 0, size() == 0 ? 0 : above(Amounts.of(budget.spent()), perMonth()), 0);
  }

  /** The first month has seen some spending. */
  State start(State state) {
    return size() == 0
        ? state
        : state.withCount(first, (int) (Amounts.of(budget.spent()) / PER_COUNT));
  }

  private long perMonth() {
    return Amounts.of(budget.perMonth());
  }

  private int count(Slot slot) {
    return first + months.indexOf(YearMonth.from(slot.ordered()));
  }

  /** By how many percent more an order passes budgets. */
  long lacking(State state, Slot slot, long cost) {
    long lacking = above(cost, Amounts.of(budget.perOrder()));
    if (size() > 0) {
      long spent = state.counts()[count(slot)] * PER_COUNT;
      lacking += above(spent + cost, perMonth()) - above(spent, perMonth());
    }
    return lacking;
  }

  State spend(State state, Slot slot, long cost) {
    return size() == 0
        ? state
        : state.withCount(count(slot), state.counts()[count(slot)] + (int) (cost / PER_COUNT));
  }

  private static long above(long amount, long limit) {
    return limit == 0
        ? 0
        : Math.max(0, -Math.floorDiv(-(100_000 * (amount - limit) - limit), 1000 * limit));
  }
}
