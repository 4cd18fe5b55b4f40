package io.frostlot.plan;

import io.frostlot.units.Money;

/**
 * Moving prey from one freezer to another, where the used shares of life add up.
 *
 * @param everyDays may be done on the first planning day and every so many days after; 0 = never
 * @param perPiece reckoned for each piece moved
 */
public record MovesPolicy(int everyDays, Money perPiece) {
  public static final MovesPolicy NONE = new MovesPolicy(0, Money.ZERO);

  public MovesPolicy {
    if (everyDays < 0 || perPiece.isNegative()) {
      throw new IllegalArgumentException("moves every " + everyDays + " days, " + perPiece);
    }
  }
}
