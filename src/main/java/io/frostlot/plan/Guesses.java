package io.frostlot.plan;

import io.frostlot.units.Money;
import java.util.Comparator;
import java.util.List;

/**
 * What to find out: guesses, and how the next orders change at both ends of each.
 *
 * @param tried those that change the next orders most first
 * @param notTried for want of time or rounds of work, those that are likely to matter most first
 */
public record Guesses(List<Tried> tried, List<Guess> notTried) implements SecondLook {
  public Guesses {
    tried = tried.stream().sorted(Comparator.comparing(Tried::moved).reversed()).toList();
    notTried = List.copyOf(notTried);
  }

  /** A guess, and the best plans found at its ends. */
  public record Tried(Guess guess, End low, End high) {
    /** The larger of what moves at its ends. */
    Money moved() {
      return low.moved().atLeast(high.moved()) ? low.moved() : high.moved();
    }

    /** Do the next orders stay as they are at both ends? */
    public boolean changesNothing() {
      return low.moved().isZero() && high.moved().isZero();
    }
  }

  /**
   * The best plan found at one end.
   *
   * @param side its meals and soft rules
   * @param changes of the next orders
   * @param moved list price of the packs that are ordered next in one of the two plans only
   * @param sure it is proven best
   */
  public record End(
      Difference.Side side, List<Changes.OrderChange> changes, Money moved, boolean sure) {
    public End {
      changes = List.copyOf(changes);
    }
  }
}
