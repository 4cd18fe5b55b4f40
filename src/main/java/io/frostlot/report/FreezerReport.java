package io.frostlot.report;

import io.frostlot.plan.Difference;
import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.Gap;
import io.frostlot.plan.World;
import io.frostlot.units.Litres;
import java.util.List;

/**
 * Findings about freezers in words, each as soon as it is known.
 *
 * @param width characters in a line; 72 to 120 are used
 */
public record FreezerReport(World world, int width) {
  private static final int MOST_DAYS = 12;

  private Wording wording() {
    return new Wording(world.scenario().currency());
  }

  /** What is looked at. */
  public String head() {
    Page page = new TextPage(width);
    page.title("Frostlot: the freezers of " + world.scenario().name());
    return page.toString();
  }

  /**
   * A finding under its heading.
   *
   * @param again was one of its kind told before?
   */
  public String text(FreezerFinding finding, boolean again) {
    Page page = new TextPage(width);
    if (finding instanceof FreezerFinding.Use use) {
      use(use, again, page);
    } else if (finding instanceof FreezerFinding.Loss loss) {
      new LossText(wording()).write(loss, page);
    } else if (finding instanceof FreezerFinding.Curve curve) {
      curve(curve, page);
    } else if (finding instanceof FreezerFinding.Fit fit) {
      fit(fit, page);
    } else {
      oneMore((FreezerFinding.OneMore) finding, page);
    }
    return page.toString();
  }

  /** Said at the end, where something may thaw. */
  public String end() {
    Page page = new TextPage(width);
    page.heading("Cautions");
    LossText.CAUTIONS.forEach(page::point);
    return page.toString();
  }

  private void use(FreezerFinding.Use use, boolean again, Page page) {
    page.heading("How full", again);
    new RoomTaken(use.loads(), world.scenario().planning()).write(page);
    page.heading("The largest delivery that fits beside the plan");
    Table table = Table.of("arriving on", ">litres that day", ">litres to stay");
    List<FreezerFinding.Free> free = use.free();
    free.stream()
        .limit(MOST_DAYS)
        .forEach(
            day -> table.row(Wording.day(day.day()), litres(day.thatDay()), litres(day.lasting())));
    page.table(table);
    if (free.size() > MOST_DAYS) {
      page.say("And %d later days (--format json or csv).".formatted(free.size() - MOST_DAYS));
    }
    page.say(
        "That day: together in all freezers in use. To stay: so much is free on every later day"
            + " too. A litre holds about 450 g of bagged prey (common practice).");
  }

  private static String litres(Litres litres) {
    return Wording.decimal(litres.toDouble());
  }

  private void curve(FreezerFinding.Curve curve, Page page) {
    page.heading("Money against the room of " + curve.freezer().name());
    Table table = Table.of(">litres", ">cost", ">bound", ">a litre more saves", "");
    for (int i = 0; i < curve.points().size(); i++) {
      FreezerFinding.Point point = curve.points().get(i);
      boolean any = i + 1 == curve.points().size();
      table.row(
          any ? "any" : litres(point.litres()),
          wording().bare(point.plan().standing().money().rounded(world.decimals())),
          point.plan().answer().bound().stream()
              .mapToObj(wording()::barely)
              .findFirst()
              .orElse("?"),
          any ? "" : slope(curve, i),
          note(curve, i));
    }
    page.table(table);
    page.say(
        "Cost: of the plan found, with reckoned costs and the days after; bound: no plan costs"
            + " less. From %s l on more room gains nothing, as far as was found."
                .formatted(litres(curve.enough())));
    curve.points().stream()
        .filter(point -> point.litres().equals(curve.freezer().usable()))
        .forEach(point -> unsure(point, page));
    if (curve.points().stream().anyMatch(it -> it.plan().answer().bound().isEmpty())) {
      page.say("?: whether better meals could be had is not known; " + Differences.MORE_TIME + ".");
    }
  }

  private void unsure(FreezerFinding.Point point, Page page) {
    Gap.of(point.plan().answer())
        .filter(gap -> !wording().isNothing(gap.amount()))
        .ifPresent(
            gap ->
                page.say(
                    "As it is, the cost is at most %s%s above the best possible: smaller differences may be chance; %s."
                        .formatted(
                            wording().atMost(gap.amount()),
                            gap.boxCharges().stream()
                                .mapToObj(it -> " (" + Wording.decimal(it) + " box charges)")
                                .findFirst()
                                .orElse(""),
                            Differences.MORE_TIME)));
  }

  private String slope(FreezerFinding.Curve curve, int i) {
    boolean money =
        curve
            .points()
            .get(i)
            .plan()
            .standing()
            .sameBeforeMoney(curve.points().get(i + 1).plan().standing());
    return money ? wording().barely(curve.worth(i)) : "meals";
  }

  private static String note(FreezerFinding.Curve curve, int i) {
    FreezerFinding.Point point = curve.points().get(i);
    if (point.litres().equals(curve.freezer().usable())) {
      return "<- as it is";
    }
    if (point.litres().equals(curve.enough())) {
      return "<- flat from here on";
    }
    return point.difference().sameMeals()
        ? curve.bendsAt(i) ? "<- a kink" : ""
        : Differences.state(Difference.Side.of(point.plan()));
  }

  private void fit(FreezerFinding.Fit fit, Page page) {
    page.heading("Does it fit?");
    Differences differences = new Differences(wording());
    page.say(
        "With any room instead of what is there: " + differences.verdict(fit.unlimited()) + ".");
    if (fit.thrownAway() > 0) {
      page.point(
          "To make room %s thrown away by decision: eat or give away these first (see the plan)."
              .formatted(Wording.count(fit.thrownAway(), "piece is", "pieces are")));
    }
    boolean tight =
        !fit.unlimited().sameMeals() || !wording().isNothing(fit.unlimited().found().toDouble());
    if (tight) {
      page.point("Order less at a time: the plan does where that pays, which is what room costs.");
      page.point("Fetch from a shop or a show what does not fit, where one is in reach.");
      page.point("Look at the curve for the least room that is enough, or at --more-litres.");
      page.point("Flat bags with the air squeezed out take less room (kgPerLitre).");
    }
  }

  private void oneMore(FreezerFinding.OneMore more, Page page) {
    page.heading("One more deep freezer of " + litres(more.freezer().usable()) + " litres");
    Differences differences = new Differences(wording());
    page.say("With it: " + differences.verdict(more.difference()) + ".");
    if (!more.difference().sameMeals()) {
      return;
    }
    double years = more.payBackYears();
    page.say(
        "Over a year, from %d days: %s, running cost taken off. %s"
            .formatted(
                more.days(),
                wording().barely(more.netPerYear())
                    + Wording.NO_BREAK
                    + wording().currency().getCurrencyCode(),
                Double.isInfinite(years)
                    ? "It never pays for itself."
                    : "It costs %s and has paid for itself after %s years."
                        .formatted(
                            wording().money(more.purchase().price()), Wording.decimal(years))));
  }
}
