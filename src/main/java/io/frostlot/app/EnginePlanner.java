package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Resuming;
import io.frostlot.program.Watch;
import java.util.List;

/** Asks the engine. */
public final class EnginePlanner implements Planner {
  @Override
  public Answer plan(World world, Limits limits, Watch watch) {
    return Engine.solve(world, limits, watch);
  }

  @Override
  public Answer planFrom(List<Plan> known, World world, Limits limits, Watch watch) {
    return Resuming.solve(world, known, limits, watch);
  }
}
