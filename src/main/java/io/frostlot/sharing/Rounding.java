package io.frostlot.sharing;

import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rounds shares to the minor unit so that they add up: all down, then the missing units to those
 * that lost most (largest remainder; earlier members first among equals).
 */
public final class Rounding {
  private Rounding() {}

  /** An inexact amount as money: what differs in the tenth digit only is the same. */
  public static Money exactly(double amount) {
    BigDecimal digits = new BigDecimal(amount, new MathContext(10));
    return new Money(digits.setScale(Math.min(10, digits.scale()), RoundingMode.HALF_EVEN));
  }

  /**
   * Rounded shares, by member.
   *
   * @param shares in major units; their sum differs from the total by rounding only
   * @param total a multiple of the minor unit
   * @param decimals of the minor unit
   */
  public static List<Money> settle(double[] shares, Money total, int decimals) {
    BigDecimal unit = BigDecimal.ONE.movePointLeft(decimals);
    List<BigDecimal> exact = new ArrayList<>();
    List<BigDecimal> rounded = new ArrayList<>();
    BigDecimal missing = total.amount();
    for (double share : shares) {
      BigDecimal amount = exactly(share).amount();
      exact.add(amount);
      rounded.add(amount.setScale(decimals, RoundingMode.FLOOR));
      missing = missing.subtract(rounded.get(rounded.size() - 1));
    }
    int units = missing.divide(unit).intValueExact();
    List<Integer> mostLost =
        IntStream.range(0, shares.length)
            .boxed()
            .sorted(
                Comparator.comparing((Integer i) -> exact.get(i).subtract(rounded.get(i)))
                    .reversed()
                    .thenComparing(i -> i))
            .toList();
    for (int i = 0; i < shares.length; i++) {
      int member = mostLost.get(i);
      int share = Math.floorDiv(units - i + shares.length - 1, shares.length);
      rounded.set(member, rounded.get(member).add(unit.multiply(BigDecimal.valueOf(share))));
    }
    return rounded.stream().map(Money::new).toList();
  }
}
