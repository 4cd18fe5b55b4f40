package io.frostlot.report;

import io.frostlot.plan.SaleFinding;

/** Whether to wait for a deal that is only likely. */
record WaitingText(Differences differences) {
  static final String HEADING = "Wait for it?";

  void write(SaleFinding.Waiting waiting, Page page) {
    page.heading(HEADING);
    page.say(advice(waiting));
    page.point("If it comes, having waited: " + differences.verdict(waiting.ifItComes()) + ".");
    page.point(
        "If it does not, having waited: " + differences.verdict(waiting.ifItDoesNot()) + ".");
    waiting
        .latestSafe()
        .forEach(
            day ->
                page.point(
                    "Without one meal or margin less one can wait until "
                        + Wording.day(day)
                        + (day.equals(waiting.until())
                            ? ", when it would come."
                            : ", and order then.")));
    page.say(
        "Waiting means: no order before %s from those that ship; what is fetched may bridge. The other way is to order till then what the plan without it orders."
            .formatted(Wording.day(waiting.until())));
  }

  static void write(SaleFinding.NothingToWaitFor nothing, Page page) {
    page.heading(HEADING);
    page.say(
        nothing.atOnce()
            ? "There is nothing to wait for: it would hold from the first planning day on."
            : "There is nothing to wait for: the plan found without it orders nothing before %s from those that ship."
                .formatted(Wording.day(nothing.until())));
  }

  private String advice(SaleFinding.Waiting waiting) {
    if (waiting.ifItDoesNot().sameMeals() && !waiting.moneyDecides()) {
      return "Whether meals are met depends on it; see below.";
    }
    if (!waiting.moneyDecides()) {
      return "Do not wait where the meals below matter more than money: waiting in vain leaves"
          + " other meals met.";
    }
    String amount = differences.wording().atLeast(Math.abs(waiting.expected()));
    boolean exact =
        differences.isExact(waiting.ifItComes()) && differences.isExact(waiting.ifItDoesNot());
    return (exact ? "" : "As far as was found: ") + advice(waiting, amount);
  }

  private static String advice(SaleFinding.Waiting waiting, String amount) {
    String even =
        waiting.breakEven() > 1
            ? "At no chance does waiting pay."
            : "It pays from a chance of " + Wording.percentUp(waiting.breakEven()) + " on.";
    return waiting.expected() > 0
        ? "Wait: at a chance of %s it gains %s on average. %s"
            .formatted(waiting.chance(), amount, even)
        : "Do not wait: at a chance of %s it %s on average. %s"
            .formatted(
                waiting.chance(),
                waiting.expected() < 0 ? "loses " + amount : "gains nothing",
                even);
  }
}
