package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.Map;

/**
 * A piece that is eaten after its best before is charged, reckoned, once, in the tail too.
 *
 * <p>The charge is per piece times the sum of eaten(s) over all segments s of the flows of what is
 * past its best. {@link Stowing} lets each piece go one of two ways: it can be eaten up to its best
 * before and is then thrown away, or it is eaten from the next day on, or kept. So the plan may
 * leave a piece that is past its best for later, and first eat one that soon will be.
 */
final class PastBest implements Rule {
  private final World world;

  PastBest(World world) {
    this.world = world;
  }

  private Money perPiece() {
    return world.scenario().policy().charges().pastBest();
  }

  @Override
  public String id() {
    return "past-best";
  }

  @Override
  public String says() {
    return "A piece eaten after its best before is reckoned at " + perPiece() + ".";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  @Override
  public void impose(Program program) {
    Linear pieces = new Linear();
    for (Flow flow : program.decisions().flows()) {
      for (int s = 0; flow.shelf().pastBest() && s < flow.days().segments().length; s++) {
        pieces.plus(flow.eaten(s));
      }
    }
    if (!pieces.hasNoTerms()) {
      program.charge(this, new Linear().plus(perPiece().toDouble(), pieces));
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    if (perPiece().isZero()) {
      return;
    }
    Map<String, Lot> lots = plan.lotsById();
    long late = 0;
    for (Feeding feeding : plan.feedings()) {
      for (Feeding.Draw draw : feeding.draws()) {
        Lot lot = lots.get(draw.lotId());
        late += lot != null && feeding.day().isAfter(world.bestBefore(lot)) ? draw.pieces() : 0;
      }
    }
    books.reckoned(id(), perPiece().times(late));
  }
}
