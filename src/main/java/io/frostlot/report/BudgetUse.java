package io.frostlot.report;

import io.frostlot.plan.Order;
import io.frostlot.plan.Policy;
import io.frostlot.units.Money;
import java.time.YearMonth;
import java.util.Map;
import java.util.TreeMap;

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
    page.heading("Budget, " + wording.currency().getCurrencyCode());
    if (!budget.perOrder().isZero()) {
      Money dearest =
          report.plan().orders().stream()
              .map(order -> total(report, order))
              .max(Money::compareTo)
              .orElse(Money.ZERO);
      page.point(
          "The dearest order comes to %s of %s."
              .formatted(wording.bare(dearest), wording.bare(budget.perOrder())));
    }
    if (!budget.perMonth().isZero()) {
      byMonth(report, budget)
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

  /** With what was spent in the first month before. */
  private static Map<YearMonth, Money> byMonth(PlanReport report, Policy.Budget budget) {
    TreeMap<YearMonth, Money> byMonth = new TreeMap<>();
    byMonth.put(YearMonth.from(report.world().scenario().planning().from()), budget.spent());
    for (Order order : report.plan().orders()) {
      byMonth.merge(YearMonth.from(order.slot().ordered()), total(report, order), Money::plus);
    }
    return byMonth;
  }

  private static Money total(PlanReport report, Order order) {
    return report.books().ledger(order.slot()).total();
  }
}
