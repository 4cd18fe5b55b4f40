package io.frostlot.report;

import static java.time.temporal.ChronoUnit.DAYS;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Standing;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** The head of the letter: whose plan, for which days, and the answer in four lines. */
final class InShort implements Sections.Section {
  private static final int SHOWN_DIGITS = 12;
  private static final int MOST_NEXT = 3;

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
    page.fact("Next", next(report));
    page.fact("Money", money(report));
    page.fact("Meals", meals(report));
    page.fact("Sure", HowSure.inShort(report));
  }

  /** Every order that is due, or else that none is, and the first of all. */
  private static String next(PlanReport report) {
    LocalDate first = report.world().scenario().planning().from();
    List<Order> next = report.plan().next(first);
    String orders =
        next.stream()
            .limit(MOST_NEXT)
            .map(order -> next(report, order))
            .collect(Collectors.joining("; "));
    int more = next.size() - MOST_NEXT;
    return orders.isEmpty()
        ? "nothing to order."
        : NextOrders.noneDue(report).map(none -> none + "; then ").orElse("")
            + orders
            + (more > 0 ? "; and " + more + " more" : "")
            + ".";
  }

  private static String next(PlanReport report, Order order) {
    Supplier supplier = report.world().supplier(order.slot().supplier());
    return "%s from %s %s, %s"
        .formatted(
            supplier.isPickUp() ? "fetch" : "order",
            supplier.name(),
            OrderBlock.when(supplier, order.slot()),
            report.wording().money(report.books().ledger(order.slot()).total()));
  }

  private static String money(PlanReport report) {
    Wording wording = report.wording();
    Money tail = report.books().total(Books.Account.TAIL);
    Money reckoned = report.books().total(Books.Account.RECKONED);
    return "%s to pay for %s%s%s."
        .formatted(
            wording.money(report.books().total(Books.Account.CASH)),
            Wording.count(report.plan().orders().size(), "order", "orders"),
            reckoned.isZero() ? "" : "; reckoned besides " + wording.bare(reckoned),
            tail.isZero()
                ? ""
                : "; %s for prey of the %s days after, not ordered now"
                    .formatted(
                        wording.bare(tail), report.world().scenario().policy().tail().days()));
  }

  private static String meals(PlanReport report) {
    int planned =
        report.world().demands().stream()
            .filter(demand -> !demand.tail())
            .mapToInt(demand -> demand.meal().count())
            .sum();
    Standing standing = report.answer().plan().standing();
    int unmet = standing.unmet();
    int late = report.outcome().lateMeals();
    return (unmet == 0 ? "all " + planned + " met" : unmet + " of " + planned + " NOT MET")
        + (late == 0 ? "" : ", " + late + " late")
        + ".";
  }
}
