package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.PutTogether;
import io.frostlot.program.Watch;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Plans a joint world, begun with members' own plans put together, or with one known already. */
record JointPlanner(Planner planner, Watch watch) {
  Answer plan(World world, Map<Keeper, Plan> alone, Optional<Plan> known, Limits limits) {
    List<Plan> plans =
        Stream.concat(known.stream(), PutTogether.of(world, alone).stream()).toList();
    return planner.planFrom(plans, world, limits, watch);
  }
}
