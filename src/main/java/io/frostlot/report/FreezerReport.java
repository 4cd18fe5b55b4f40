package io.frostlot.report;

import io.frostlot.plan.FreezerFinding;
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
  private static final List<String> WAYS_OUT =
      List.of(
          "Fetch from a shop or a show what does not fit, where one is in reach.",
          "Flat bags with the air squeezed out take less room (kgPerLitre).");

  private Wording wording() {
    return new Wording(world.scenario().currency());
  }

  /** What is looked at. */
  public String head() {
    return TextPage.of(
        width, page -> page.title("Frostlot: the freezers of " + world.scenario().name()));
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
      new FreezerCurveText(wording(), world.decimals()).write(curve, page);
    } else if (finding instanceof FreezerFinding.Fit fit) {
      fit(fit, page);
    } else if (finding instanceof FreezerFinding.OneMore more) {
      new OneMoreText(wording()).write(more, page);
    } else {
      notKnown(((FreezerFinding.NotKnown) finding).asked(), page);
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

  private static void notKnown(FreezerFinding.Asked asked, Page page) {
    page.heading(
        switch (asked) {
          case CURVE -> "Money against room";
          case FIT -> "Does it fit?";
          case ONE_MORE -> "One more deep freezer";
        });
    page.say(Differences.NOT_KNOWN);
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
            day -> table.row(Wording.day(day.day()), room(day.thatDay()), room(day.lasting())));
    page.table(table);
    if (free.size() > MOST_DAYS) {
      page.say("And %d later days (--format json or csv).".formatted(free.size() - MOST_DAYS));
    }
    page.say(
        "That day: together in all freezers in use. To stay: so much is free on every later day"
            + " too. A litre holds about 450 g of bagged prey (common practice).");
  }

  /** In a column all have a decimal. */
  static String column(Litres litres) {
    return Wording.tenths(litres.toDouble());
  }

  /** Rounded down: that much fits for sure. */
  private static String room(Litres litres) {
    return Wording.tenths(Math.floorDiv(litres.microlitres(), 100_000) / 10.0);
  }

  /**
   * What to do where there is no plan.
   *
   * @param more what of one more freezer, at most one
   */
  public String doesNotFit(FreezerFinding.RoomInstead room, List<FreezerFinding.MoreInstead> more) {
    return TextPage.of(
        width,
        page -> {
          page.heading("What to do where it does not fit");
          new NoRoomText(page).write(room);
          more.forEach(new NoRoomText(page)::write);
          page.point(
              "With best-effort in place of all (policy.meals) the commands name the meals that"
                  + " cannot be met, and plan the others.");
          WAYS_OUT.forEach(page::point);
        });
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
      page.point("Look at the curve for the least room that is enough, or at --more-litres.");
      WAYS_OUT.forEach(page::point);
    }
  }
}
