package io.frostlot.plan;

import io.frostlot.units.Litres;
import io.frostlot.units.Money;

/**
 * What a night in a freezer is reckoned at.
 *
 * @param perPiece money tied up
 * @param perLitre room taken
 */
public record HoldingCharge(Money perPiece, Money perLitre) {
  private static final int DECIMALS = 10;

  public boolean isZero() {
    return perPiece.isZero() && perLitre.isZero();
  }

  /** Of so many nights of pieces and of room. */
  public Money of(long pieceNights, Litres litreNights) {
    return perPiece.times(pieceNights).plus(perLitre.times(litreNights.toDecimal(), DECIMALS));
  }
}
