package io.frostlot.report;

import io.frostlot.plan.Difference;
import io.frostlot.plan.Excess;
import io.frostlot.plan.SaleFinding;
import io.frostlot.plan.World;

/**
 * Net saving of a deal against packs. Where it turns, and that no pack is worth taking, is only
 * said where that is proven; else where the saving at the packs of the best plan lies.
 */
record SaleCurveText(World world, Wording wording) {

  void write(SaleFinding.Curve curve, Page page) {
    page.heading("Net saving against packs: " + curve.deal().id());
    Table table = Table.of(">packs", "", ">cost", ">saves", ">at least", ">at most", "");
    curve.points().forEach(point -> row(point, curve, table));
    page.table(table);
    page.say(
        "Cost: of the plan found, with reckoned costs and the days after; saves: between the plans"
            + " found; at least, at most: with both at their best (%s). %s"
                .formatted(
                    wording.currency().getCurrencyCode(),
                    curve.points().stream()
                            .flatMap(point -> point.difference().stream())
                            .allMatch(Difference::sameMeals)
                        ? ""
                        : "No saving is told where other meals are met, or come late, than without"
                            + " the sale."));
    Differences differences = new Differences(wording);
    curve.points().stream()
        .filter(point -> turns(point, curve))
        .flatMap(point -> point.difference().stream())
        .flatMap(difference -> differences.unsure(difference, curve.boxCharge()).stream())
        .forEach(page::say);
    page.say(until(curve) + beyond(curve));
    curve
        .reasons()
        .forEach(reason -> page.point(new ExcessWording(world, wording).says(reason) + "."));
  }

  /** Where the plan with more packs is not proven, the reasons are only those found. */
  private String beyond(SaleFinding.Curve curve) {
    boolean meals = curve.reasons().stream().anyMatch(it -> it.kind() == Excess.Kind.MEALS_SUFFER);
    boolean found =
        curve.points().stream()
            .filter(SaleFinding.Point::atLeast)
            .flatMap(point -> point.difference().stream())
            .findFirst()
            .filter(it -> it.sameMeals() ? !new Differences(wording).isExact(it) : !meals)
            .isPresent();
    return curve.reasons().isEmpty()
        ? ""
        : found ? " Beyond that, as far as was found:" : " Beyond that:";
  }

  private void row(SaleFinding.Point point, SaleFinding.Curve curve, Table table) {
    String packs = String.valueOf(point.packs());
    String extent = point.atLeast() ? "or more" : "at most";
    if (point.difference().isEmpty()) {
      table.row(packs, extent, "", "", "", "", "no plan was found");
      return;
    }
    Differences differences = new Differences(wording);
    Difference difference = point.difference().get(0);
    Difference.Side after = difference.after();
    boolean same = difference.sameMeals();
    String meals = same ? "" : Differences.state(after) + " ";
    table.row(
        packs,
        extent,
        wording.bare(after.standing().money().rounded(world.decimals())),
        same ? wording.bare(difference.found()) : "",
        same ? differences.least(difference) : "",
        same ? differences.most(difference) : "",
        (meals + mark(point, curve)).strip());
  }

  private static String mark(SaleFinding.Point point, SaleFinding.Curve curve) {
    if (!turns(point, curve)) {
      return "";
    }
    return curve.sure() ? "<- here it turns" : "<- best found";
  }

  private static boolean turns(SaleFinding.Point point, SaleFinding.Curve curve) {
    return !point.atLeast() && point.packs() == curve.turn();
  }

  private String until(SaleFinding.Curve curve) {
    String packs = Wording.count(curve.turn(), "pack", "packs");
    if (curve.sure()) {
      return curve.turn() == 0
          ? "No pack of it is worth taking."
          : "It pays up to %s.".formatted(packs);
    }
    String atBest =
        curve.points().stream()
            .filter(point -> turns(point, curve))
            .flatMap(point -> point.difference().stream())
            .filter(Difference::sameMeals)
            .map(new Differences(wording)::atBest)
            .findFirst()
            .map(lies -> " With so many, and both plans at their best, it " + lies + ".")
            .orElse("");
    return curve.turn() == 0
        ? "No plan was found in which a pack of it is worth taking; whether any is cannot be told"
            + " yet."
        : "As far as was found it pays up to %s; whether fewer or more are better cannot be told yet.%s"
            .formatted(packs, atBest);
  }
}
