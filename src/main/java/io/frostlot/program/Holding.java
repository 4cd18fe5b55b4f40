package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.HoldingCharge;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.units.Litres;
import java.time.LocalDate;

/**
 * Each piece in a freezer is charged, reckoned, for each night of the planning days, from its
 * earliest arrival on: for itself, and for the litres that it takes.
 */
final class Holding implements Rule {
  private final World world;

  Holding(World world) {
    this.world = world;
  }

  private HoldingCharge perNight() {
    return world.scenario().policy().charges().holding();
  }

  @Override
  public String id() {
    return "holding";
  }

  @Override
  public String says() {
    return "A piece in a freezer is reckoned at "
        + perNight().perPiece()
        + " a night, a litre at "
        + perNight().perLitre()
        + ".";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  /**
   * Nights of what is there in each interval, with those of the way to it, less the nights to the
   * interval's end that each meal spares. Where days are taken together the nights before an
   * arrival are taken off in the same way; what is thrown away is charged no more than it is.
   */
  @Override
  public void impose(Program program) {
    if (perNight().isZero()) {
      return;
    }
    Timeline timeline = program.decisions().timeline();
    Linear money = new Linear();
    for (Flow flow : program.decisions().flows()) {
      money.plus(perNight(flow.item()), pieceNights(flow, timeline));
    }
    for (Decisions.Served served : program.decisions().served()) {
      money.minus(
          served.weighed(
              choice -> perNight(choice.option().item()) * sparedPieceNights(choice, timeline)));
    }
    program.charge(this, money);
  }

  private double perNight(Item item) {
    return perNight().of(1, item.litres()).toDouble();
  }

  /** Beside those after the interval, which no stock is charged for. */
  private static int sparedPieceNights(DemandClass.Choice choice, Timeline timeline) {
    ItemDays days = timeline.of(choice.option().item());
    int end = days.intervalEnd(days.intervalOfSegment(choice.segment()));
    return (choice.sparedNights() - nightsAfter(end, timeline)) * choice.option().pieces();
  }

  private static int nightsAfter(int day, Timeline timeline) {
    return timeline.nightsFrom(timeline.firstDayOf(day + 1));
  }

  private static Linear pieceNights(Flow flow, Timeline timeline) {
    Linear pieceNights = new Linear();
    for (int k = 0; k < flow.intervals(); k++) {
      int nights = timeline.nightsFrom(timeline.firstDayOf(flow.days().intervals()[k]));
      if (nights > 0) {
        pieceNights
            .plus(nights - nightsAfter(flow.days().intervalEnd(k), timeline), flow.stock(k))
            .plus(flow.thrown(k));
      }
    }
    for (Flow.Part part : flow.parts()) {
      int there = Math.min(part.from(), part.until() + 1);
      int nights =
          timeline.nightsFrom(part.coming().arrives())
              - timeline.nightsFrom(timeline.firstDayOf(there));
      pieceNights.plus(nights, part.pieces());
    }
    return pieceNights;
  }

  @Override
  public void judge(Plan plan, Books books) {
    if (perNight().isZero()) {
      return;
    }
    Levels levels = new Levels(plan);
    long pieceNights = 0;
    Litres litreNights = Litres.ZERO;
    LocalDate after = world.scenario().planning().to().plusDays(1);
    for (Lot lot : plan.lots()) {
      LocalDate from =
          lot.earliest().isBefore(world.scenario().planning().from())
              ? world.scenario().planning().from()
              : lot.earliest();
      LocalDate end = lot.useBy().isBefore(after) ? lot.useBy().plusDays(1) : after;
      long ofLot = 0;
      for (LocalDate day = from; day.isBefore(end); day = day.plusDays(1)) {
        ofLot += Math.max(0, levels.atNight(lot, day));
      }
      pieceNights += ofLot;
      litreNights = litreNights.plus(lot.item().litres().times(ofLot));
    }
    books.reckoned(id(), perNight().of(pieceNights, litreNights));
  }
}
