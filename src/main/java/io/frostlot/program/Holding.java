package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.time.LocalDate;

/**
 * Each piece in a freezer is charged, reckoned, for each night of the planning days, from its
 * earliest arrival on.
 */
final class Holding implements Rule {
  private final World world;

  Holding(World world) {
    this.world = world;
  }

  private Money perNight() {
    return world.scenario().policy().charges().holding();
  }

  @Override
  public String id() {
    return "holding";
  }

  @Override
  public String says() {
    return "A piece in a freezer is reckoned at " + perNight() + " a night.";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  /** Days are segments of their own where holding is charged, so each night is looked at. */
  @Override
  public void impose(Program program) {
    if (perNight().isZero()) {
      return;
    }
    Timeline timeline = program.decisions().timeline();
    int last = timeline.at(world.scenario().planning().to());
    Linear pieceNights = new Linear();
    for (Flow flow : program.decisions().flows()) {
      for (int day = timeline.first(); day <= last; day++) {
        pieceNights.plus(flow.present(day, true));
      }
    }
    program.charge(this, new Linear().plus(perNight().toDouble(), pieceNights));
  }

  @Override
  public void judge(Plan plan, Books books) {
    if (perNight().isZero()) {
      return;
    }
    Levels levels = new Levels(plan);
    long pieceNights = 0;
    LocalDate after = world.scenario().planning().to().plusDays(1);
    for (Lot lot : plan.lots()) {
      LocalDate from =
          lot.earliest().isBefore(world.scenario().planning().from())
              ? world.scenario().planning().from()
              : lot.earliest();
      LocalDate end = lot.useBy().isBefore(after) ? lot.useBy().plusDays(1) : after;
      for (LocalDate day = from; day.isBefore(end); day = day.plusDays(1)) {
        pieceNights += levels.atNight(lot, day);
      }
    }
    books.reckoned(id(), perNight().times(pieceNights));
  }
}
