package io.frostlot.report;

import io.frostlot.plan.BillLines;
import io.frostlot.plan.Outline;
import io.frostlot.plan.PlanComparison;
import io.frostlot.units.Money;
import java.util.Currency;
import java.util.Locale;

/** Two plans side by side: only what differs, meals first, then orders, then bill by bill. */
public record ComparisonReport(PlanComparison comparison, Currency currency) {

  /** Laid out for so many characters in a line; 72 to 120 are used. */
  public String text(int width) {
    Page page = new TextPage(width);
    Wording wording = new Wording(currency);
    page.title("Frostlot: two plans compared");
    page.say("Before: " + comparison.names().get(0) + ".");
    page.say("After: " + comparison.names().get(1) + ".");
    if (comparison.changes().stale()) {
      page.say("They were made from different inputs.");
    }
    if (comparison.changes().isEmpty() && comparison.lines().isEmpty()) {
      page.say("Nothing differs: same meals, same orders, same money.");
      return page.toString();
    }
    boolean meals =
        !comparison.changes().nowMet().isEmpty() || !comparison.changes().nowUnmet().isEmpty();
    page.heading(meals ? "Meals and orders that differ" : "Orders that differ; the same meals");
    new ChangesText(
            comparison.changes(), wording, id -> comparison.suppliers().getOrDefault(id, id))
        .write(page);
    bills(page, wording);
    if (meals) {
      page.say("Meals differ, so neither is cheaper: less may be eaten.");
    }
    return page.toString();
  }

  private void bills(Page page, Wording wording) {
    page.heading("Bill by bill, " + currency.getCurrencyCode());
    Table table = Table.of("", "bill", ">before", ">after", ">difference");
    for (BillLines.Line line : comparison.lines()) {
      table.row(
          line.account().name().toLowerCase(Locale.ROOT),
          Differences.rule(line.rule()),
          wording.bare(line.before()),
          wording.bare(line.after()),
          wording.bare(line.difference()));
    }
    Outline.Totals before = comparison.changes().costs().before();
    Outline.Totals after = comparison.changes().costs().after();
    Money difference = after.cost().minus(before.cost());
    table.row(
        "",
        "all of it",
        wording.bare(before.cost()),
        wording.bare(after.cost()),
        wording.bare(difference));
    page.table(table);
    page.say("Lines that are equal are left out; the differences sum exactly to the last line.");
  }
}
