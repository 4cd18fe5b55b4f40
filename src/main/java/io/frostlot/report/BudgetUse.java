package io.frostlot.report;

import io.frostlot.plan.Policy;
import io.frostlot.plan.Spending;
import io.frostlot.units.Money;

/**
 * What the orders of each month come to beside the budget, and the dearest order beside its own.
 */
final class BudgetUse implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    Policy.Budget budget = report.world().scenario().policy().ordering().budget();
    if (budget.isNone()) {
      return;
    }
    Wording wording = report.wording();
    Spending spending = Spending.of(report.world(), report.plan(), report.books());
    page.heading("Budget, " + wording.currency().getCurrencyCode());
    if (!budget.perOrder().isZero()) {
      Money dearest = spending.orders().values().stream().max(Money::compareTo).orElse(Money.ZERO);
      page.point(
          "The dearest order comes to %s of %s."
              .formatted(wording.bare(dearest), wording.bare(budget.perOrder())));
    }
    if (!budget.perMonth().isZero()) {
      spending
          .byMonth()
          .forEach(
              (month, spent) ->
                  page.point(
                      "%s: %s of %s."
                          .formatted(
                              Wording.month(month),
                              wording.bare(spent),
                              wording.bare(budget.perMonth()))));
    }
  }
}
