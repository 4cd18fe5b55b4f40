package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Supplier;
import java.util.Optional;

/** Solves a world level by level; every plan is judged by every rule before it is shown. */
public final class Engine {
  private Engine() {}

  /** The best answer within the limits, or up to the time the watch says stop. */
  public static Answer solve(World world, Limits limits, Watch watch) {
    requireKnownTerms(world);
    Search search = new Search(world, limits, watch);
    Optional<Answer.WithPlan> best = search.run();
    if (best.isPresent()) {
      return best.get();
    }
    return search.isImpossible()
        ? new Clash(world).find()
        : new Answer.NothingFound();
  }

  /** A bill that leaves a term of the supplier out is never shown. */
  private static void requireKnownTerms(World world) {
    for (Supplier supplier : world.scenario().suppliers()) {
      boolean saleOnSteps =
          !supplier.sheet().sales().isEmpty()
              && supplier.sheet().breaks().stream()
                  .anyMatch(b -> b.counting() == PriceBreak.Counting.INCREMENTAL);
      if (saleOnSteps
          || !world.scenario().policy().safety().margin().isZero()) {
        throw new UnsupportedOperationException(
            "supplier " + supplier.id()
                + ": incremental breaks together with sales and a margin in percent are not planned with yet");
      }
    }
  }
}
