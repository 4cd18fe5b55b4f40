package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Lot;
import io.frostlot.plan.MovesPolicy;
import io.frostlot.plan.Moving;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;

/**
 * Prey is moved between freezers at set days only, once, and each piece moved is charged, reckoned.
 *
 * <p>A piece that is moved is one of the ways in which {@link Stowing} splits what comes: it takes
 * room where it came until the day of the move, and is eaten or thrown away from that day on where
 * it is moved to. With d days of life left that day and a life of L days there, l here, it keeps
 * floor(d L / l) days there (common practice: used shares of life add up).
 */
final class Moves implements Rule {
  private final World world;

  Moves(World world) {
    this.world = world;
  }

  private MovesPolicy moves() {
    return world.scenario().policy().moves();
  }

  @Override
  public String id() {
    return "moves";
  }

  @Override
  public String says() {
    return moves().everyDays() == 0
        ? "Nothing is moved from one freezer to another."
        : "Prey may be moved between freezers every "
            + moves().everyDays()
            + " days; a piece moved is reckoned at "
            + moves().perPiece()
            + ".";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  @Override
  public void impose(Program program) {
    Linear pieces = new Linear();
    for (Flow flow : program.decisions().flows()) {
      flow.parts().stream()
          .filter(part -> part.lot().isMoved())
          .forEach(part -> pieces.plus(part.pieces()));
    }
    if (!pieces.hasNoTerms()) {
      program.charge(this, new Linear().plus(moves().perPiece().toDouble(), pieces));
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    Moving moving = new Moving(world);
    long pieces = 0;
    for (Lot lot : plan.lots()) {
      if (lot.isMoved()) {
        pieces += lot.pieces();
        Lot stayed = lot.stayedUntil(lot.useBy());
        Lot before = stayed.withUseBy(world.keeps(stayed).useBy());
        if (moving.of(before).stream().noneMatch(other -> other.equals(lot))) {
          books.breach(id(), "lot " + lot.id(), lot.move(), "a move that is allowed");
        }
      }
    }
    if (pieces > 0) {
      books.reckoned(id(), moves().perPiece().times(pieces));
    }
  }
}
