package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.PutTogether;
import io.frostlot.program.Watch;
import java.util.Map;

/** Plans a joint world, begun with members' own plans put together. */
record JointPlanner(Planner planner, Watch watch) {
  Answer plan(World world, Map<Keeper, Plan> alone, Limits limits) {
    return planner.planFrom(PutTogether.of(world, alone).stream().toList(), world, limits, watch);
  }
}
