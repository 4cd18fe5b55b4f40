package io.frostlot.plan;

import io.frostlot.units.Money;

/**
 * Somebody pays somebody.
 *
 * @param from who pays
 * @param to who gets it
 * @param amount above zero
 */
public record Payment(String from, String to, Money amount) {
  public Payment {
    if (amount.isNegative() || amount.isZero()) {
      throw new IllegalArgumentException("a payment of " + amount);
    }
  }
}
