package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Shared;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every member and subgroup is spoken of, by name or as one of the others. */
final class ReasonToLeaveTest {
  private static String said(List<List<String>> better, List<List<String>> unsettled) {
    ReasonToLeave reason =
        new ReasonToLeave(
            new Shared.Contentment(better, unsettled, 0), new Wording(Currency.getInstance("EUR")));
    return TextPage.of(120, reason::write);
  }

  @Test
  void what_is_not_known_is_told_as_such_and_all_others_have_none() {
    assertThat(said(List.of(), List.of(List.of("Ash", "Bramble"))))
        .contains("Ash and Bramble: not known, since what ordering without the others would cost")
        .contains("No other member or subgroup has a reason to leave.")
        .doesNotContain("settled", "Nobody");
  }

  @Test
  void who_is_better_off_alone_is_named_and_all_others_have_none() {
    assertThat(said(List.of(List.of("Clay")), List.of()))
        .contains("Clay: better off without the others")
        .contains("No other member or subgroup has a reason to leave.");
  }

  @Test
  void nobody_has_one_where_nothing_was_found() {
    assertThat(said(List.of(), List.of()))
        .contains("Nobody has a reason to leave")
        .doesNotContain("No other");
  }
}
