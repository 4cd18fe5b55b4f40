package io.frostlot.report;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Standing;
import io.frostlot.units.Money;
import java.time.temporal.ChronoUnit;

/** The head of the letter: whose plan, for which days, and the answer in four lines. */
final class InShort implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    Scenario scenario = report.world().scenario();
    page.title("Frostlot: what to order for " + scenario.name());
    long days =
        ChronoUnit.DAYS.between(scenario.planning().from(), scenario.planning().to()) + 1;
    page.say(
        Wording.count(days, "day", "days")
            + " from "
            + Wording.day(scenario.planning().from())
            + " to "
            + Wording.day(scenario.planning().to())
            + "; "
            + Wording.count(scenario.collection().animals().size(), "animal", "animals")
            + "; money in "
            + scenario.currency().getCurrencyCode()
            + "; inputs "
            + report.inputs().digest().substring(0, 12)
            + ".");
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
    return "order from "
        + report.world().supplier(order.slot().supplier()).name()
        + " by "
        + Wording.day(order.slot().ordered())
        + ", "
        + report.wording().money(report.books().ledger(order.slot()).total())
        + ".";
  }

  private static String money(PlanReport report) {
    Wording wording = report.wording();
    Money tail = report.books().total(Books.Account.TAIL);
    return wording.bare(report.books().total(Books.Account.CASH))
        + " in cash for "
        + Wording.count(report.plan().orders().size(), "order", "orders")
        + ", "
        + wording.bare(report.books().total(Books.Account.RECKONED))
        + " reckoned"
        + (tail.isZero() ? "" : ", " + wording.bare(tail) + " for the days after")
        + ".";
  }

  private static String meals(PlanReport report) {
    long planned =
        report.world().demands().stream()
            .filter(demand -> !demand.tail())
            .mapToInt(demand -> demand.meal().count())
            .sum();
    Standing standing = report.answer().plan().standing();
    int unmet = standing.unmetMust() + standing.unmetOther();
    int late = report.outcome().late().stream().mapToInt(it -> it.meals()).sum();
    return (unmet == 0 ? "all " + planned + " met" : unmet + " of " + planned + " NOT MET")
        + (late == 0 ? "" : ", " + late + " late")
        + ".";
  }
}
