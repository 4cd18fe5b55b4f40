package io.frostlot.report;

import io.frostlot.plan.Difference;
import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.Gap;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Solved;

/**
 * Money against the room of a freezer. What a litre is worth is an interval unless both its ends
 * are proven; a kink, or that nothing is gained further on, is only said where it is certain.
 *
 * @param decimals of money
 */
record FreezerCurveText(Wording wording, int decimals) {

  void write(FreezerFinding.Curve curve, Page page) {
    page.heading("Money against the room of " + curve.freezer().name());
    Table table = Table.of(">litres", ">cost", ">bound", ">a litre more saves", "");
    for (int i = 0; i < curve.points().size(); i++) {
      FreezerFinding.Point point = curve.points().get(i);
      boolean any = i + 1 == curve.points().size();
      table.row(
          any ? "any" : FreezerReport.column(point.litres()),
          wording.bare(point.plan().standing().money().rounded(decimals)),
          point.plan().answer().bound().stream().mapToObj(wording::barely).findFirst().orElse("?"),
          any ? "" : worth(curve, i),
          note(curve, i));
    }
    page.table(table);
    page.say(
        "Cost: of the plan found, with reckoned costs and the days after; bound: no plan costs"
            + " less. A litre more saves: up to the next row, with both rows at their best.");
    page.say(enough(curve));
    curve.points().stream()
        .filter(point -> point.litres().equals(curve.freezer().usable()))
        .forEach(point -> unsure(point, page));
    if (curve.points().stream().anyMatch(it -> it.plan().answer().bound().isEmpty())) {
      page.say("?: not known, and perhaps better meals can be had; " + Differences.MORE_TIME + ".");
    }
  }

  private String enough(FreezerFinding.Curve curve) {
    String litres = Wording.decimal(curve.enough().toDouble());
    if (curve.isFlat()) {
      return "From %s l on more room gains nothing.".formatted(litres);
    }
    Solved any = curve.points().get(curve.points().size() - 1).plan();
    return "From %s l on no more room was found to gain anything. %s"
        .formatted(
            litres,
            Gap.of(any.answer())
                .map(gap -> "It may gain at most %s.".formatted(wording.atMost(gap.amount())))
                .orElse("What it may gain is not known."));
  }

  private void unsure(FreezerFinding.Point point, Page page) {
    Gap.of(point.plan().answer())
        .filter(gap -> !wording.isNothing(gap.amount()))
        .ifPresent(
            gap ->
                page.say(
                    "As it is, the cost is at most %s%s above the best possible; %s."
                        .formatted(
                            wording.atMost(gap.amount()),
                            gap.boxCharges().stream()
                                .mapToObj(it -> " (" + Wording.decimal(it) + " box charges)")
                                .findFirst()
                                .orElse(""),
                            Differences.MORE_TIME)));
  }

  private String worth(FreezerFinding.Curve curve, int i) {
    if (!curve.isKnown(i)) {
      return "?";
    }
    return curve.sameMeals(i) ? between(curve.worth(i)) : "meals";
  }

  /** Such as "1.20" or "0.00 to 3.40". */
  private String between(Interval worth) {
    if (worth.most().isEmpty()) {
      return "cannot tell";
    }
    String least = wording.barely(worth.least().orElse(0));
    String most = wording.barely(worth.most().getAsDouble());
    return least.equals(most) ? least : least + " to " + most;
  }

  private static String note(FreezerFinding.Curve curve, int i) {
    FreezerFinding.Point point = curve.points().get(i);
    if (point.litres().equals(curve.freezer().usable())) {
      return "<- as it is"
          + (point.plan().standing().lacksNothing()
              ? ""
              : ": " + Differences.state(Difference.Side.of(point.plan())));
    }
    if (point.litres().equals(curve.enough())) {
      return curve.isFlat() ? "<- flat from here on" : "<- enough, as far as was found";
    }
    if (!point.difference().sameMeals()) {
      return Differences.state(Difference.Side.of(point.plan()));
    }
    return curve.bendsAt(i) ? "<- a kink" : "";
  }
}
