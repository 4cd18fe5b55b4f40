package io.frostlot.report;

import io.frostlot.plan.Shared;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Optional;

/** What it means that a saving is below nothing, or may be. */
record Savings(List<Shared.Sheet> sheets, Wording wording) {

  /** No loss beside a plan that is known: all that is known is that there may be a better one. */
  void mayBeNone(Page page) {
    boolean below =
        sheets.stream()
            .map(Shared.Sheet::account)
            .anyMatch(it -> !it.saving().isNegative() && isNegative(it.sureSaving()));
    if (below) {
      page.say(
          "A lower end below "
              + wording.bare(Money.ZERO)
              + " is no loss that is known: a member's best own plan may come to less than the one"
              + " found, and the lower end reckons with that.");
    }
  }

  /** Who pays more than by its own plan that was found, and so surely more than alone. */
  void areLosses(Page page) {
    for (Shared.Sheet sheet : sheets) {
      Money saving = sheet.account().saving();
      if (saving.isNegative()) {
        page.point(
            sheet.keeper()
                + " is worse off in the joint order: alone it would be at least "
                + wording.money(saving.negated())
                + " less.");
      }
    }
  }

  private static boolean isNegative(Optional<Money> amount) {
    return amount.filter(Money::isNegative).isPresent();
  }
}
