package io.frostlot.report;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.supply.OrderTerms;
import io.frostlot.units.Money;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the invoices will say, by order and by rule in the order of the price ladder, and apart from
 * it what is only reckoned.
 */
final class Bill implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    Wording wording = report.wording();
    page.heading("Cash bill, " + wording.currency().getCurrencyCode());
    if (!report.plan().orders().isEmpty()) {
      page.table(byOrder(report, wording));
      page.gap();
    }
    byRule(report, Books.Account.CASH, page);
    page.total("cash in all", wording.bare(report.books().total(Books.Account.CASH)));
    apart(report, Books.Account.RECKONED, "Reckoned costs, on no invoice", page);
    apart(
        report,
        Books.Account.TAIL,
        "For the "
            + report.world().scenario().policy().tail().days()
            + " days after, not ordered now, at list price",
        page);
    page.gap();
    page.total(
        "all together, which the plan makes least",
        wording.bare(report.answer().plan().standing().money()));
  }

  private static Table byOrder(PlanReport report, Wording wording) {
    Table table =
        Table.of(
            "order by", "supplier", ">goods", ">discount", ">" + Wording.CHARGES, ">tax", ">total");
    for (Order order : report.plan().byOrderDate().toList()) {
      Books.Ledger ledger = report.books().ledger(order.slot());
      table.row(
          Wording.day(order.slot().ordered()),
          report.world().supplier(order.slot().supplier()).name(),
          wording.bare(ledger.value(OrderTerms.Subtotal.GOODS)),
          wording.bare(ledger.discount().negated()),
          wording.bare(ledger.allCharges()),
          wording.bare(ledger.tax()),
          wording.bare(ledger.total()));
    }
    return table;
  }

  private static void apart(PlanReport report, Books.Account account, String heading, Page page) {
    if (report.books().charges().stream().anyMatch(charge -> charge.account() == account)) {
      page.heading(heading);
      byRule(report, account, page);
    }
  }

  private static void byRule(PlanReport report, Books.Account account, Page page) {
    Map<String, Money> byRule = new LinkedHashMap<>();
    report.books().charges().stream()
        .filter(charge -> charge.account() == account)
        .forEach(charge -> byRule.merge(charge.rule(), charge.amount(), Money::plus));
    byRule.forEach(
        (rule, amount) -> page.amount(Wording.charge(rule), report.wording().bare(amount)));
  }
}
