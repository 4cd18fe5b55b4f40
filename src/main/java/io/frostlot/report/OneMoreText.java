package io.frostlot.report;

import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.Interval;
import java.util.OptionalDouble;

/** Whether one more freezer pays: a year is told from both plans at their best. */
record OneMoreText(Wording wording) {

  void write(FreezerFinding.OneMore more, Page page) {
    page.heading(
        "One more deep freezer of "
            + Wording.decimal(more.freezer().usable().toDouble())
            + " litres");
    Differences differences = new Differences(wording);
    page.say("With it: " + differences.verdict(more.difference()) + ".");
    page.say(
        "Reckoned so that prey keeps for %d days there: it can gain where more room alone does not."
            .formatted(more.freezer().life().days()));
    if (!more.difference().sameMeals()) {
      return;
    }
    boolean exact = differences.isExact(more.difference());
    page.say(
        "Over a year, from %d days: %s%s, running cost taken off. %s"
            .formatted(
                more.days(),
                amount(more.netPerYear()),
                exact ? "" : " between the plans found; " + atBest(more.netAtBest()),
                exact ? paysBack(more, more.netPerYear()) : perhapsPaysBack(more)));
  }

  private String amount(double net) {
    return wording.barely(net) + Wording.NO_BREAK + wording.currency().getCurrencyCode();
  }

  private String atBest(Interval net) {
    return "with both at their best at least %s and at most %s"
        .formatted(end(net.least()), end(net.most()));
  }

  private String end(OptionalDouble end) {
    return end.isPresent() ? amount(end.getAsDouble()) : "an amount not known yet";
  }

  private String paysBack(FreezerFinding.OneMore more, double net) {
    double years = more.payBackYears(net);
    return Double.isInfinite(years)
        ? "It never pays for itself."
        : "It costs %s and has paid for itself after %s years."
            .formatted(wording.money(more.purchase().price()), Wording.decimal(years));
  }

  private String perhapsPaysBack(FreezerFinding.OneMore more) {
    Interval net = more.netAtBest();
    if (net.most().orElse(1) <= 0) {
      return "It never pays for itself.";
    }
    if (net.least().orElse(0) <= 0) {
      return "Whether it ever pays for itself cannot be told yet: %s."
          .formatted(Differences.MORE_TIME);
    }
    String latest = Wording.decimal(more.payBackYears(net.least().getAsDouble()));
    return net.most().isEmpty()
        ? "It costs %s and has paid for itself after %s years at the latest."
            .formatted(wording.money(more.purchase().price()), latest)
        : "It costs %s and has paid for itself after %s to %s years."
            .formatted(
                wording.money(more.purchase().price()),
                Wording.decimal(more.payBackYears(net.most().getAsDouble())),
                latest);
  }
}
