package io.frostlot.sharing;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RoundingTest {
  /** Common practice: a flat charge of about 29 split by three is about ten each. */
  @Test
  void a_flat_charge_by_three_is_about_ten_each() {
    double third = 29 / 3.0;

    assertThat(Rounding.settle(new double[] {third, third, third}, Money.of(29), 2))
        .containsExactly(Money.of("9.67"), Money.of("9.67"), Money.of("9.66"));
  }

  @Test
  void the_largest_remainders_get_the_missing_units() {
    assertThat(Rounding.settle(new double[] {1.4, 1.9, -0.5, 2.3}, Money.of(5), 0))
        .containsExactly(Money.of(1), Money.of(2), Money.of(0), Money.of(2));
  }

  @Test
  void shares_add_up_and_equal_members_differ_by_one_unit_at_most() {
    Random random = new Random(11);
    for (int i = 0; i < 500; i++) {
      int members = 1 + random.nextInt(8);
      int decimals = random.nextInt(4);
      double unit = Math.pow(10, -decimals);
      double[] shares = new double[members];
      for (int m = 1; m < members; m++) {
        shares[m] = random.nextBoolean() ? shares[m - 1] : random.nextDouble() * 90 - 20;
      }
      double sum = 0;
      for (double share : shares) {
        sum += share;
      }
      Money total = new Money(BigDecimal.valueOf(sum).setScale(decimals, RoundingMode.HALF_UP));
      List<Money> settled = Rounding.settle(shares, total, decimals);
      assertThat(settled.stream().reduce(Money.ZERO, Money::plus)).isEqualTo(total);
      for (int m = 0; m < members; m++) {
        assertThat(Math.abs(settled.get(m).toDouble() - shares[m])).isLessThan(unit * 1.000001);
        for (int other = 0; other < members; other++) {
          if (shares[m] == shares[other]) {
            double difference = settled.get(m).minus(settled.get(other)).toDouble();
            assertThat(Math.abs(difference)).isLessThanOrEqualTo(unit * 1.000001);
          }
        }
      }
    }
  }
}
