package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.util.List;
import java.util.Optional;

/**
 * Solves a world that resembles others, begun with the plans found there: the answer is never worse
 * than one of them that can be followed here too.
 */
public final class Resuming {
  private Resuming() {}

  /** As {@link Engine#solve}; where nothing fits, it is not looked for what clashes. */
  public static Answer solve(World world, List<Plan> known, Limits limits, Watch watch) {
    Search search = new Search(world, known, limits, watch);
    Optional<Answer.WithPlan> best = search.run();
    if (best.isPresent()) {
      return best.get();
    }
    return search.isImpossible()
        ? new Answer.Impossible(List.of(), false)
        : new Answer.NothingFound();
  }
}
