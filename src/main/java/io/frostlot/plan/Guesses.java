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

    /** Is it known at no end that the next orders change? */
    public boolean changesNothing() {
      return moved().isZero();
    }

    /** Is it known at both ends how the next orders change? */
    public boolean isKnown() {
      return low.sure() != Sure.UNKNOWN && high.sure() != Sure.UNKNOWN;
    }
  }

  /**
   * The best plan found at one end.
   *
   * @param side its meals and soft rules
   * @param changes of the next orders
   * @param moved list price of the packs that are ordered next in one of the two plans only
   */
  public record End(
      Difference.Side side, List<Changes.OrderChange> changes, Money moved, Sure sure) {
    public End {
      changes = List.copyOf(changes);
    }

    /** The same, of which nothing is told: no change is drawn from it. */
    public End unknown() {
      return new End(side, List.of(), Money.ZERO, Sure.UNKNOWN);
    }
  }

  /** What is known of a plan at an end. */
  public enum Sure {
    /** Proven best. */
    PROVEN,
    /** Perhaps another is better. */
    PERHAPS,
    /** Another surely or likely is better, which was not found in the time. */
    UNKNOWN
  }
}
