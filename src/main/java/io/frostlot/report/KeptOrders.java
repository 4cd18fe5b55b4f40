package io.frostlot.report;

import io.frostlot.plan.Answer;
import io.frostlot.plan.DueSoon;
import io.frostlot.plan.Gap;

/** Whether orders due soon stay as the earlier plan had them, and what speaks for a change. */
final class KeptOrders {
  private KeptOrders() {}

  static void write(PlanReport report, Page page) {
    DueSoon dueSoon = report.world().dueSoon();
    int before = dueSoon.orders().size();
    int changed = dueSoon.changedBy(report.plan()).size();
    int added = dueSoon.addedBy(report.plan()).size();
    if (dueSoon.isNone() || before + added == 0) {
      return;
    }
    String until = " due by " + Wording.day(dueSoon.dates().to());
    if (changed + added == 0) {
      page.say(
          "%s.%s"
              .formatted(
                  before == 1
                      ? "The one order" + until + " stays as it was"
                      : "All " + before + " orders" + until + " stay as they were",
                  report.answer() instanceof Answer.Proven ? keeping(report) : ""));
      return;
    }
    page.say(
        "Of %s%s %s as planned before; %s. For each change %s are reckoned.%s"
            .formatted(
                Wording.count(before, "order", "orders"),
                until,
                stay(before - changed),
                changed + " changed or dropped, " + added + " added",
                report.wording().money(dueSoon.charge()),
                changing(report)));
  }

  private static String stay(int orders) {
    return orders == 0 ? "none stays" : orders == 1 ? "1 stays" : orders + " stay";
  }

  private static String keeping(PlanReport report) {
    String charge = report.wording().money(report.world().dueSoon().charge());
    return " To change one would save at most " + charge + ".";
  }

  /**
   * No plan is below the bound, least of all one that changes nothing and so is charged nothing.
   */
  private static String changing(PlanReport report) {
    double charged = report.world().dueSoon().chargeOf(report.plan()).toDouble();
    double gap =
        report.answer() instanceof Answer.Proven
            ? 0
            : Gap.of(report.answer()).map(Gap::amount).orElse(charged);
    double saved = Math.max(0, charged - gap);
    return report.wording().isNothing(saved)
        ? " How much dearer it would be to change nothing is not known."
        : " To change nothing and meet as many meals would cost at least "
            + report.wording().atLeast(saved)
            + " more.";
  }
}
