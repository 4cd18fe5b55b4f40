package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.util.List;

/** Finds plans, as the engine does. */
public interface Planner {
  /** The best answer within the limits, or up to the time the watch says stop. */
  Answer plan(World world, Limits limits, Watch watch);

  /**
   * The same, begun with plans of worlds that resemble this one; never worse than one of them that
   * can be followed here.
   */
  default Answer planFrom(List<Plan> known, World world, Limits limits, Watch watch) {
    return plan(world, limits, watch);
  }
}
