package io.frostlot.report;

import io.frostlot.plan.Books;
import io.frostlot.plan.BudgetPrice;

/** Whether the budget can be kept, and what a plan without it would have over the one shown. */
record PriceOfBudget(BudgetPrice price) implements Sections.Section {
  @Override
  public void write(PlanReport report, Page page) {
    page.heading("What the budget costs");
    long beyond = BudgetPrice.beyond(report.books());
    if (beyond > 0) {
      page.say(kept(report, beyond));
    }
    Wording wording = report.wording();
    page.say(
        "Without it: %s. Its orders come to %s, those of the plan shown to %s."
            .formatted(
                new Differences(wording).verdict(price.without()),
                wording.money(price.toPay()),
                wording.money(report.books().total(Books.Account.CASH))));
  }

  /** What falls short in all is known to be the least only where a bound of the money is known. */
  private static String kept(PlanReport report, long beyond) {
    boolean alone = report.books().standing().shortfall() == beyond;
    if (!alone) {
      return "The plan shown passes it by %d percent, and other rules give way too."
          .formatted(beyond);
    }
    return report.answer().bound().isPresent()
        ? "It cannot be kept with as many meals met and no other rule giving way: %d percent beyond it is the least."
            .formatted(beyond)
        : "No plan was found that keeps it with as many meals met and no other rule giving way: the one shown is %d percent beyond it."
            .formatted(beyond);
  }
}
