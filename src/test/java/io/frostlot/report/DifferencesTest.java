package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Difference;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.Standing;
import io.frostlot.units.Money;
import java.util.Currency;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DifferencesTest {
  private final Differences differences = new Differences(new Wording(Currency.getInstance("EUR")));

  private static Difference difference(int late, Interval saves) {
    return new Difference(
        new Difference.Side(new Standing(0, 0, 0, Money.of(100)), 0),
        new Difference.Side(new Standing(0, 0, 0, Money.of(88)), late),
        Money.of(12),
        saves);
  }

  private String verdict(Interval saves) {
    return differences.verdict(difference(0, saves)).replace(Wording.NO_BREAK, ' ');
  }

  @Test
  void zero_at_an_end_of_what_is_known_is_no_amount() {
    assertThat(verdict(Interval.between(0, 30)))
        .isEqualTo(
            "the same meals; cannot tell for sure: between the plans found it saves 12.00 EUR;"
                + " with both at their best it saves at most 30.00 EUR");
    assertThat(verdict(Interval.between(-30, 0))).endsWith("it costs at most 30.00 EUR more");
    assertThat(verdict(new Interval(OptionalDouble.of(0), OptionalDouble.empty())))
        .endsWith("it may save anything, since no bound is known yet");
    assertThat(verdict(new Interval(OptionalDouble.empty(), OptionalDouble.of(0))))
        .endsWith("it may cost anything more, since no bound is known yet");
    assertThat(verdict(Interval.between(5, 30)))
        .isEqualTo(
            "the same meals, and it saves 12.00 EUR between the plans found; with both at their"
                + " best it saves between 5.00 EUR and 30.00 EUR");
  }

  @Test
  void what_saves_is_named_in_every_amount() {
    assertThat(differences.verdict(difference(0, Interval.between(12, 12)), "going without it"))
        .contains("the same meals, and going without it saves 12.00");
    assertThat(differences.verdict(difference(0, Interval.between(-3, 30)), "going without it"))
        .contains("between the plans found going without it saves 12.00")
        .contains("with both at their best going without it costs at most 3.00");
    assertThat(differences.verdict(difference(0, Interval.between(5, 30)), "going without it"))
        .contains("and going without it saves 12.00")
        .contains("at their best going without it saves between 5.00");
  }

  @Test
  void where_meals_only_come_later_both_amounts_are_told_and_no_saving() {
    String verdict =
        differences.verdict(difference(2, Interval.between(12, 12))).replace(Wording.NO_BREAK, ' ');
    assertThat(verdict)
        .isEqualTo(
            "every meal met, 2 meals late instead of every meal met on its best day; so money is not compared"
                + " (88.00 EUR instead of 100.00 EUR)");
  }

  private static Difference.Side side(int unmet, int late, String... rules) {
    List<Shortfall> gaveWay =
        Stream.of(rules)
            .map(rule -> new Shortfall(rule, Shortfall.Unit.PERCENT, 4, List.of()))
            .toList();
    Standing standing = new Standing(0, unmet, 4L * rules.length, Money.of(88));
    return new Difference.Side(standing, late, gaveWay);
  }

  private String verdict(Difference.Side before, Difference.Side after) {
    Difference difference = new Difference(before, after, Money.of(12), Interval.between(12, 12));
    return differences.verdict(difference).replace(Wording.NO_BREAK, ' ');
  }

  /** Meals come first also where only a rule gives way: nothing was said of them there. */
  @Test
  void meals_are_told_before_what_rules_fall_short_of() {
    assertThat(verdict(side(0, 0), side(0, 0, "adequacy")))
        .isEqualTo(
            "every meal met on its best day in both; adequacy short by 4 percent instead of no soft"
                + " rule short; so money is not compared");
    assertThat(verdict(side(2, 1, "adequacy"), side(2, 1)))
        .startsWith(
            "2 other meals unmet, 1 meal late in both; no soft rule short instead of adequacy short"
                + " by 4 percent;");
    assertThat(verdict(side(0, 0, "budget"), side(1, 0, "adequacy", "budget")))
        .startsWith(
            "1 other meal unmet, adequacy short by 4 percent, budget short by 4 percent instead of"
                + " every meal met on its best day, budget short by 4 percent;");
  }

  @Test
  void how_wide_it_is_is_said_from_half_a_box_charge_on() {
    Difference wide = difference(0, Interval.between(0, 30));
    assertThat(differences.unsure(wide, 61)).isEmpty();
    assertThat(differences.unsure(wide, 40).orElseThrow().replace(Wording.NO_BREAK, ' '))
        .contains("within 30.00 EUR, 0.8 box charges")
        .contains("--seconds");
    assertThat(differences.unsure(difference(0, Interval.between(12, 12)), 1)).isEmpty();
    assertThat(differences.unsure(difference(1, Interval.between(0, 30)), 1)).isEmpty();
  }
}
