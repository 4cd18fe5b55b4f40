package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Shared;
import io.frostlot.units.Money;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Members who pay 100.00 in the joint plan, beside what their own plans come to. */
final class SavingsTest {
  private static final Wording WORDING = new Wording(Currency.getInstance("EUR"));

  private static Shared.Sheet sheet(String keeper, String alone, String aloneAtLeast) {
    Shared.Pays pays = new Shared.Pays(Money.of(60), Money.of(40), Money.ZERO, Money.ZERO);
    return new Shared.Sheet(
        keeper,
        List.of(),
        new Shared.Account(pays, Money.ZERO, Money.of(alone), Optional.of(Money.of(aloneAtLeast))));
  }

  private static String mayBeNone(Shared.Sheet... sheets) {
    return TextPage.of(80, new Savings(List.of(sheets), WORDING)::mayBeNone);
  }

  @Test
  void it_is_said_that_a_lower_end_below_nothing_is_no_known_loss() {
    assertThat(mayBeNone(sheet("ann", "110", "100"), sheet("bo", "100", "58.03")))
        .contains("A lower end below 0.00 is no loss that is known");
  }

  @Test
  void nothing_is_said_where_nobody_may_lose_or_the_plan_found_is_cheaper_already() {
    assertThat(mayBeNone(sheet("ann", "110", "100"))).isBlank();
    assertThat(mayBeNone(sheet("ann", "96", "90"))).isBlank();
  }

  @Test
  void who_surely_pays_more_than_alone_is_named() {
    List<Shared.Sheet> sheets = List.of(sheet("ann", "110", "100"), sheet("bo", "96", "58.03"));

    assertThat(TextPage.of(120, new Savings(sheets, WORDING)::areLosses))
        .contains("bo is worse off in the joint order: alone it would be at least 4.00 EUR less.")
        .doesNotContain("ann");
  }
}
