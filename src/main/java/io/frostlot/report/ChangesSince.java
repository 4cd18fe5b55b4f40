package io.frostlot.report;

import io.frostlot.plan.Changes;

/** What stays as in an earlier plan, and what differs from it. */
final class ChangesSince implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    report.changes().forEach(changes -> write(changes, report, page));
  }

  private static void write(Changes changes, PlanReport report, Page page) {
    page.heading("Changed since the earlier plan");
    if (changes.stale()) {
      page.say("The earlier plan is stale: it was made from other inputs.");
    }
    KeptOrders.write(report, page);
    if (changes.isEmpty()) {
      page.say("Nothing: same meals, same orders, same money.");
      return;
    }
    new ChangesText(changes, report.wording(), report.names()::supplier).write(page);
  }
}
