package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Difference;
import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Standing;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.Test;

/** A tenth of a year saves 10.00 between the plans found: 100.00 a year, less 20.00 to run. */
class OneMoreTextTest {
  private static final int PRICE = 240;

  private static String text(Interval saves) {
    Freezer freezer =
        new Freezer(
            "more",
            Litres.of(BigDecimal.TEN),
            "deep",
            new Freezer.Life(182, Grams.ZERO, 182),
            true);
    Difference difference =
        new Difference(
            new Difference.Side(new Standing(0, 0, 0, Money.of(50)), 0),
            new Difference.Side(new Standing(0, 0, 0, Money.of(40)), 0),
            Money.of(10),
            saves);
    Page page = new TextPage(100);
    new OneMoreText(new Wording(Currency.getInstance("EUR")))
        .write(
            new FreezerFinding.OneMore(
                freezer,
                difference,
                new FreezerFinding.Purchase(Money.of(PRICE), Money.of(20)),
                36),
            page);
    return page.toString().replaceAll("\\s+", " ").replace(Wording.NO_BREAK, ' ');
  }

  /** 365/36 x 10.00 - 20.00 = 81.39; 240.00 / 81.39 = 2.9. */
  @Test
  void what_is_proven_has_one_answer() {
    assertThat(text(Interval.between(10, 10)))
        .contains("Over a year, from 36 days: 81.39 EUR, running cost taken off.")
        .contains("It costs 240.00 EUR and has paid for itself after 2.9 years.");
  }

  /** 365/36 x 5.00 - 20.00 = 30.69, x 20.00 - 20.00 = 182.78: 7.8 and 1.3 years. */
  @Test
  void what_is_not_is_told_from_both_ends() {
    assertThat(text(Interval.between(5, 20)))
        .contains("81.39 EUR between the plans found; with both at their best at least 30.69 EUR")
        .contains("and at most 182.78 EUR")
        .contains("has paid for itself after 1.3 to 7.8 years.");
    assertThat(text(Interval.between(0, 20)))
        .contains("Whether it ever pays for itself cannot be told yet");
    assertThat(text(Interval.between(0, 1.9))).contains("It never pays for itself.");
  }

  /** Or it seems to contradict that more room of what there is gains nothing. */
  @Test
  void how_long_prey_keeps_there_is_said() {
    assertThat(text(Interval.between(10, 10)))
        .contains("prey keeps for 182 days there: it can gain where more room alone does not.");
  }
}
