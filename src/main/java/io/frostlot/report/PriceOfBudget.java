package io.frostlot.report;

import io.frostlot.plan.Difference;

/** What a plan without the budget would have over the one shown. */
record PriceOfBudget(Difference difference) implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    page.heading("What the budget costs");
    page.say("Without it: " + new Differences(report.wording()).verdict(difference) + ".");
  }
}
