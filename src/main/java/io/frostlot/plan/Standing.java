package io.frostlot.plan;

import io.frostlot.units.Money;
import java.util.Comparator;

/**
 * What answers are compared by, in this order.
 *
 * @param unmetMust unmet must-meals
 * @param unmetOther other unmet meals of the planning days
 * @param shortfall what soft rules lack, one for each piece, piece-day, or percent
 * @param money cash, reckoned and tail
 */
public record Standing(int unmetMust, int unmetOther, long shortfall, Money money)
    implements Comparable<Standing> {
  private static final Comparator<Standing> ORDER =
      Comparator.comparingInt(Standing::unmetMust)
          .thenComparingInt(Standing::unmetOther)
          .thenComparingLong(Standing::shortfall)
          .thenComparing(Standing::money);

  /** Unmet meals of any importance. */
  public int unmet() {
    return unmetMust + unmetOther;
  }

  /** Are all meals met, and does no soft rule fall short? */
  public boolean lacksNothing() {
    return unmet() == 0 && shortfall == 0;
  }

  public Standing withShortfall(long other) {
    return new Standing(unmetMust, unmetOther, other, money);
  }

  /** Equal in everything that comes before money. */
  public boolean sameBeforeMoney(Standing other) {
    return unmetMust == other.unmetMust
        && unmetOther == other.unmetOther
        && shortfall == other.shortfall;
  }

  /** Worse in the first level before money that differs. */
  public boolean worseBeforeMoney(Standing other) {
    return !sameBeforeMoney(other) && compareTo(other) > 0;
  }

  @Override
  public int compareTo(Standing other) {
    return ORDER.compare(this, other);
  }
}
