package io.frostlot.report;

import io.frostlot.plan.Deal;
import io.frostlot.plan.Difference;
import io.frostlot.plan.SaleFinding;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import java.util.List;
import java.util.Locale;

/**
 * Findings about deals in words, each as soon as it is known.
 *
 * @param width characters in a line; 72 to 120 are used
 */
public record SaleReport(World world, int width) {

  private Wording wording() {
    return new Wording(world.scenario().currency());
  }

  /** What is looked at. */
  public String head(List<Deal> deals) {
    Page page = new TextPage(width);
    page.title("Frostlot: is it worth it for " + world.scenario().name() + "?");
    deals.forEach(deal -> page.point(new DealWording(world, wording()).says(deal)));
    return page.toString();
  }

  /**
   * A finding under its heading.
   *
   * @param again was one of its kind told before?
   */
  public String text(SaleFinding finding, boolean again) {
    Page page = new TextPage(width);
    if (finding instanceof SaleFinding.Worth worth) {
      worth(worth, again, page);
    } else if (finding instanceof SaleFinding.Curve curve) {
      new SaleCurveText(world, wording()).write(curve, page);
    } else if (finding instanceof SaleFinding.Apart apart) {
      apart(apart, page);
    } else if (finding instanceof SaleFinding.WorseCase worse) {
      worse(worse, page);
    } else if (finding instanceof SaleFinding.Waiting waiting) {
      new WaitingText(new Differences(wording())).write(waiting, page);
    } else if (finding instanceof SaleFinding.NothingToWaitFor nothing) {
      WaitingText.write(nothing, page);
    } else {
      notKnown(((SaleFinding.NotKnown) finding).asked(), page);
    }
    return page.toString();
  }

  /** Said at the end. */
  public String end() {
    Page page = new TextPage(width);
    page.gap();
    page.say(
        "Every number comes from planning again under the same rules. The plan buys for schedules"
            + " and masses as typed; lives in a freezer are common practice: see the cautions that"
            + " the command plan prints, and ask a vet where an animal does not eat.");
    return page.toString();
  }

  private static void notKnown(SaleFinding.Asked asked, Page page) {
    page.heading(
        switch (asked) {
          case CURVE -> "Net saving against packs";
          case APART -> "Each one alone";
          case WORSE_CASE -> "If more meals are skipped";
          case WAITING -> WaitingText.HEADING;
        });
    page.say(Differences.NOT_KNOWN);
  }

  private void worth(SaleFinding.Worth worth, boolean again, Page page) {
    page.heading("Worth it?", again);
    Difference difference = worth.difference();
    boolean taken = worth.packs().stream().anyMatch(packs -> packs.with() > 0);
    page.say(yesOrNo(worth) + new Differences(wording()).verdict(difference) + ".");
    page.say("It may be declined, so it is never worth less than nothing.");
    if (taken) {
      page.heading("How many packs while it lasts");
      Table table = Table.of("item", ">a pack", ">with it", ">without it");
      worth
          .packs()
          .forEach(
              packs ->
                  table.row(
                      packs.pack().item().name(),
                      pieces(packs.pack()),
                      String.valueOf(packs.with()),
                      String.valueOf(packs.without())));
      page.table(table);
    }
    if (!worth.changes().isEmpty()) {
      page.heading("What changes");
      new ChangesText(worth.changes(), wording(), new Names(world)::supplier).write(page);
    }
  }

  /** Yes and no only where no bound that is still unknown can make it otherwise. */
  private String yesOrNo(SaleFinding.Worth worth) {
    Difference difference = worth.difference();
    boolean money =
        difference.before().standing().sameBeforeMoney(difference.after().standing())
            && difference.found().toDouble() > 0;
    boolean sureOfMeals = difference.betterMeals() && worth.without().answer().bound().isPresent();
    boolean sureOfMoney = difference.sameMeals() && difference.saves().least().orElse(0) > 0;
    if (sureOfMeals || (money && sureOfMoney)) {
      return "Yes: ";
    }
    if (difference.betterMeals() || money) {
      return "Yes, as far as was found: ";
    }
    return new Differences(wording()).isExact(difference) ? "No: " : "Not known yet: ";
  }

  private static String pieces(Pack pack) {
    return String.valueOf(pack.pieces());
  }

  private void apart(SaleFinding.Apart apart, Page page) {
    page.heading("Each one alone");
    for (SaleFinding.Alone alone : apart.alone()) {
      page.point(
          alone.deal().id() + ": " + new Differences(wording()).verdict(alone.difference()) + ".");
    }
    page.say("What they are worth alone does not add up to what they are worth together.");
  }

  private void worse(SaleFinding.WorseCase worse, Page page) {
    page.heading(
        "If %s of the meals are skipped".formatted(worse.skipped()).toUpperCase(Locale.ROOT));
    Differences differences = new Differences(wording());
    page.point("Known beforehand: " + differences.verdict(worse.best()) + ".");
    worse
        .asTaken()
        .forEach(
            taken ->
                page.point(
                    "With the %s of above bought all the same: %s."
                        .formatted(
                            Wording.count(worse.packs(), "pack", "packs"),
                            differences.verdict(taken))));
  }
}
