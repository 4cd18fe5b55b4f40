package io.frostlot.report;

import static java.time.temporal.ChronoUnit.DAYS;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Standing;
import io.frostlot.units.Money;
import io.frostlot.units.Period;

/** The head of the letter: whose plan, for which days, and the answer in four lines. */
final class InShort implements Sections.Section {
  private static final int SHOWN_DIGITS = 12;

  @Override
  public void write(PlanReport report, Page page) {
    Scenario scenario = report.world().scenario();
    page.title("Frostlot: what to order for " + scenario.name());
    Period planning = scenario.planning();
    page.say(
        "%s from %s to %s; %s; money in %s; inputs %s."
            .formatted(
                Wording.count(planning.from().until(planning.to(), DAYS) + 1, "day", "days"),
                Wording.day(planning.from()),
                Wording.day(planning.to()),
                Wording.count(scenario.collection().animals().size(), "animal", "animals"),
                scenario.currency().getCurrencyCode(),
                report.inputs().digest().substring(0, SHOWN_DIGITS)));
    page.gap();
    page.hang("  Next   ", next(report));
    page.hang("  Money  ", money(report));
    page.hang("  Meals  ", meals(report));
    page.hang("  Sure   ", HowSure.inShort(report));
  }

  private static String next(PlanReport report) {
    return report.plan().orders().stream()
        .min(NextOrders.BY_DATE)
        .map(order -> next(report, order))
        .orElse("nothing to order.");
  }

  private static String next(PlanReport report, Order order) {
    return "order from %s by %s, %s."
        .formatted(
            report.world().supplier(order.slot().supplier()).name(),
            Wording.day(order.slot().ordered()),
            report.wording().money(report.books().ledger(order.slot()).total()));
  }

  private static String money(PlanReport report) {
    Wording wording = report.wording();
    Money tail = report.books().total(Books.Account.TAIL);
    return "%s in cash for %s, %s reckoned%s."
        .formatted(
            wording.bare(report.books().total(Books.Account.CASH)),
            Wording.count(report.plan().orders().size(), "order", "orders"),
            wording.bare(report.books().total(Books.Account.RECKONED)),
            tail.isZero() ? "" : ", " + wording.bare(tail) + " for the days after");
  }

  private static String meals(PlanReport report) {
    int planned =
        report.world().demands().stream()
            .filter(demand -> !demand.tail())
            .mapToInt(demand -> demand.meal().count())
            .sum();
    Standing standing = report.answer().plan().standing();
    int unmet = standing.unmetMust() + standing.unmetOther();
    int late = report.outcome().late().stream().mapToInt(Outcome.Late::meals).sum();
    return (unmet == 0 ? "all " + planned + " met" : unmet + " of " + planned + " NOT MET")
        + (late == 0 ? "" : ", " + late + " late")
        + ".";
  }
}
