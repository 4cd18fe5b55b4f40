package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;

/** Finds plans, as the engine does. */
public interface Planner {
  /** The best answer within the limits, or up to the time the watch says stop. */
  Answer plan(World world, Limits limits, Watch watch);
}
