package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.units.Money;
import java.util.Currency;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said of a saving where own plans may be better than those found. */
final class ShareReportTest {
  private static final Wording WORDING = new Wording(Currency.getInstance("EUR"));

  private static String said(String surely, String saved) {
    return ShareReport.between(Optional.of(Money.of(surely)), Money.of(saved), WORDING);
  }

  @Test
  void what_is_not_known_well_lies_between_two_amounts() {
    assertThat(said("84.33", "90.00")).isEqualTo("84.33 to 90.00");
  }

  @Test
  void one_amount_is_said_where_own_plans_are_the_best() {
    assertThat(said("90.00", "90.00")).isEqualTo("90.00");
  }

  @Test
  void a_saving_may_be_none() {
    assertThat(said("-1.00", "90.00")).isEqualTo("-1.00 to 90.00");
  }

  @Test
  void where_nothing_is_known_of_the_best_own_plan_the_one_found_says_how_much_at_most() {
    assertThat(ShareReport.between(Optional.empty(), Money.of("90.00"), WORDING))
        .isEqualTo("at most 90.00");
  }
}
