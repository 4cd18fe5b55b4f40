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
      curve(curve, page);
    } else if (finding instanceof SaleFinding.Apart apart) {
      apart(apart, page);
    } else if (finding instanceof SaleFinding.WorseCase worse) {
      worse(worse, page);
    } else {
      new WaitingText(new Differences(wording())).write((SaleFinding.Waiting) finding, page);
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

  private void worth(SaleFinding.Worth worth, boolean again, Page page) {
    page.heading("Worth it?", again);
    Difference difference = worth.difference();
    boolean taken = worth.packs().stream().anyMatch(packs -> packs.with() > 0);
    page.say(yesOrNo(difference) + new Differences(wording()).verdict(difference) + ".");
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

  private String yesOrNo(Difference difference) {
    boolean money =
        difference.before().standing().sameBeforeMoney(difference.after().standing())
            && difference.found().toDouble() > 0;
    boolean sure = difference.sameMeals() && difference.saves().least().orElse(0) > 0;
    if (difference.betterMeals() || (money && sure)) {
      return "Yes: ";
    }
    if (money) {
      return "Yes, as far as was found: ";
    }
    return new Differences(wording()).isExact(difference) ? "No: " : "No, as far as was found: ";
  }

  private static String pieces(Pack pack) {
    return String.valueOf(pack.pieces());
  }

  private void curve(SaleFinding.Curve curve, Page page) {
    page.heading("Net saving against packs: " + curve.deal().id());
    Differences differences = new Differences(wording());
    Table table = Table.of(">packs", "", ">cost", ">saves", ">at least", ">at most", "");
    for (SaleFinding.Point point : curve.points()) {
      if (point.difference().isEmpty()) {
        table.row(packs(point), extent(point), "", "", "", "", "no plan was found");
        continue;
      }
      Difference difference = point.difference().get(0);
      Difference.Side after = difference.after();
      boolean same = difference.sameMeals();
      String meals = same ? "" : Differences.state(after) + " ";
      table.row(
          packs(point),
          extent(point),
          wording().bare(after.standing().money().rounded(world.decimals())),
          same ? wording().bare(difference.found()) : "",
          same ? differences.least(difference) : "",
          same ? differences.most(difference) : "",
          (meals + mark(point, curve)).strip());
    }
    page.table(table);
    page.say(
        "Cost: of the plan found, with reckoned costs and the days after; saves: between the plans"
            + " found; at least, at most: with both at their best (%s). %s"
                .formatted(
                    wording().currency().getCurrencyCode(),
                    curve.points().stream()
                            .flatMap(point -> point.difference().stream())
                            .allMatch(Difference::sameMeals)
                        ? ""
                        : "No saving is told where other meals are met, or come late, than without"
                            + " the sale."));
    curve.points().stream()
        .filter(point -> turns(point, curve))
        .flatMap(point -> point.difference().stream())
        .flatMap(difference -> differences.unsure(difference, curve.boxCharge()).stream())
        .forEach(page::say);
    String until =
        curve.turn() == 0
            ? "No pack of it is worth taking."
            : "It pays up to %s.".formatted(Wording.count(curve.turn(), "pack", "packs"));
    page.say(until + (curve.reasons().isEmpty() ? "" : " Beyond that:"));
    curve
        .reasons()
        .forEach(reason -> page.point(new ExcessWording(world, wording()).says(reason) + "."));
  }

  private static String packs(SaleFinding.Point point) {
    return String.valueOf(point.packs());
  }

  private static String extent(SaleFinding.Point point) {
    return point.atLeast() ? "or more" : "at most";
  }

  private static String mark(SaleFinding.Point point, SaleFinding.Curve curve) {
    return turns(point, curve) ? "<- here it turns" : "";
  }

  private static boolean turns(SaleFinding.Point point, SaleFinding.Curve curve) {
    return !point.atLeast() && point.packs() == curve.turn();
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
