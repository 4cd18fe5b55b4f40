package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Difference;
import io.frostlot.plan.Interval;
import io.frostlot.plan.SaleFinding;
import io.frostlot.plan.Standing;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;

class WaitingTextTest {
  private static final LocalDate DAY = LocalDate.of(2031, 1, 19);

  private static Difference saves(String money, double width) {
    Money found = Money.of(money);
    return new Difference(
        new Difference.Side(new Standing(0, 0, 0, Money.of(100)), 0),
        new Difference.Side(new Standing(0, 0, 0, Money.of(100).minus(found)), 0),
        found,
        Interval.between(found.toDouble() - width, found.toDouble() + width));
  }

  private static String text(String ifItComes, String ifItDoesNot, double width) {
    Page page = new TextPage(100);
    new WaitingText(new Differences(new Wording(Currency.getInstance("EUR"))))
        .write(
            new SaleFinding.Waiting(
                Percent.of("50"),
                DAY,
                saves(ifItComes, width),
                saves(ifItDoesNot, width),
                List.of()),
            page);
    return page.toString().replaceAll("\\s+", " ").replace(Wording.NO_BREAK, ' ');
  }

  /** Gains 9.80, loses 4.70: 4.70 / 14.50 = 32.4 %, so that at 32 % waiting loses still. */
  @Test
  void the_chance_from_which_on_it_pays_is_rounded_up() {
    assertThat(text("9.80", "-4.70", 0))
        .contains("Wait: at a chance of 50 % it gains 2.55 EUR on average.")
        .contains("It pays from a chance of 33 % on.")
        .doesNotContain("As far as was found");
    assertThat(text("3", "-1", 0)).contains("It pays from a chance of 25 % on.");
  }

  /** (0 - 4.70) / 2; 0 / 2. */
  @Test
  void what_loses_on_average_is_said_to_lose() {
    assertThat(text("0", "-4.70", 0)).contains("at a chance of 50 % it loses 2.35 EUR on average.");
    assertThat(text("0", "0", 0)).contains("at a chance of 50 % it gains nothing on average.");
  }

  @Test
  void what_is_not_proven_is_advice_as_far_as_was_found() {
    assertThat(text("9.80", "-4.70", 20)).contains("As far as was found: Wait:");
    assertThat(text("0", "-4.70", 20))
        .contains("As far as was found: Do not wait:", "At no chance does waiting pay.");
  }

  @Test
  void where_nothing_would_wait_it_says_so() {
    Page page = new TextPage(100);
    WaitingText.write(new SaleFinding.NothingToWaitFor(DAY, false), page);
    assertThat(page.toString().replace(Wording.NO_BREAK, ' '))
        .contains("There is nothing to wait for: the plan found without it orders nothing before")
        .contains("Sun 19 Jan 2031");
  }
}
