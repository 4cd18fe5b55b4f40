package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.units.Money;
import java.util.Currency;
import org.junit.jupiter.api.Test;

/** What is said of a saving where own plans may be better than those found. */
final class ShareReportTest {
  private static final Wording WORDING = new Wording(Currency.getInstance("EUR"));

  private static String said(String saved, String surely) {
    Page page = new TextPage(80);
    ShareReport.sureOf(Money.of(saved), Money.of(surely), WORDING, page);
    return page.toString();
  }

  @Test
  void what_is_saved_at_least_is_said_where_it_is_less() {
    assertThat(said("90.00", "84.33")).contains("best plan possible").contains(" 84.33");
  }

  @Test
  void nothing_is_said_where_own_plans_are_the_best() {
    assertThat(said("90.00", "90.00")).isEmpty();
  }

  @Test
  void a_saving_that_may_be_none_is_not_certain() {
    assertThat(said("90.00", "-1.00")).contains("not certain").doesNotContain("1.00");
  }
}
