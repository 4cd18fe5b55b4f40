package io.frostlot.report;

import io.frostlot.plan.BillLines;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Outline;
import io.frostlot.plan.PlanComparison;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;

/**
 * Two plans side by side: only what differs, meals first, then what soft rules fall short of, then
 * orders and bill by bill; a saving is drawn only where nothing before money differs.
 */
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
    List<String> differ = differ();
    if (differ.isEmpty() && comparison.changes().isEmpty() && comparison.lines().isEmpty()) {
      page.say("Nothing differs: same meals, same orders, same money.");
      return page.toString();
    }
    page.heading(
        differ.isEmpty()
            ? "Orders that differ; the same meals"
            : Wording.capital(String.join(", ", differ)) + " and orders that differ");
    ChangesText changes =
        new ChangesText(
            comparison.changes(), wording, id -> comparison.suppliers().getOrDefault(id, id));
    changes.meals(page);
    if (!comparison.before().sameMeals(comparison.after())) {
      page.point(
          "%s; before: %s."
              .formatted(
                  Wording.capital(Differences.state(comparison.after())),
                  Differences.state(comparison.before())));
    }
    changes.orders(page);
    bills(page, wording);
    if (!differ.isEmpty()) {
      page.say(
          "%s: not the same in both, so neither is cheaper; the difference in money is no saving."
              .formatted(Wording.capital(String.join(", ", differ))));
    }
    return page.toString();
  }

  /** What differs of all that comes before money, in that order. */
  private List<String> differ() {
    Difference.Side before = comparison.before();
    Difference.Side after = comparison.after();
    List<String> differ = new ArrayList<>();
    if (!comparison.sameMealsMet()) {
      differ.add("meals");
    }
    if (before.standing().shortfall() != after.standing().shortfall()) {
      differ.add("soft rules");
    }
    if (before.lateMeals() != after.lateMeals()) {
      differ.add("late meals");
    }
    return differ;
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
