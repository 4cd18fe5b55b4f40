package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.PutTogether;
import io.frostlot.program.Watch;
import io.frostlot.supply.Slot;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Plans a joint world, begun with members' own plans put together, or with one known already; where
 * these cannot be put together, first with only the deliveries near those of members' own plans.
 */
record JointPlanner(Planner planner, Watch watch) {
  private static final int NEAR_DAYS = 3;
  private static final int PARTS = 2;

  Answer plan(World world, Map<Keeper, Plan> alone, Optional<Plan> known, Limits limits) {
    List<Plan> plans =
        Stream.concat(known.stream(), PutTogether.of(world, alone).stream()).toList();
    List<Slot> few = world.slots().stream().filter(slot -> isNear(slot, alone)).toList();
    if (!plans.isEmpty() || few.isEmpty() || few.size() == world.slots().size()) {
      return planner.planFrom(plans, world, limits, watch);
    }
    Limits half = limits.part(PARTS);
    Answer first = planner.planFrom(plans, world.withSlots(few), half, new OfAPart(watch));
    return first instanceof Answer.WithPlan found
        ? planner.planFrom(List.of(found.plan().plan()), world, half, watch)
        : planner.planFrom(plans, world, half, watch);
  }

  private static boolean isNear(Slot slot, Map<Keeper, Plan> alone) {
    return alone.entrySet().stream()
        .anyMatch(
            member ->
                member.getValue().slots().stream()
                    .anyMatch(own -> isNear(slot, own, member.getKey())));
  }

  private static boolean isNear(Slot slot, Slot own, Keeper keeper) {
    long days = Math.abs(ChronoUnit.DAYS.between(slot.ordered(), own.ordered()));
    return slot.supplier().equals(own.supplier())
        ? days <= NEAR_DAYS
        : slot.supplier().equals(keeper.fetching(own.supplier())) && days == 0;
  }

  /** Tells of plans, but not of a bound, which holds for a part of the deliveries only. */
  private record OfAPart(Watch all) implements Watch {
    @Override
    public boolean stop() {
      return all.stop();
    }

    @Override
    public void found(Answer.WithPlan best) {
      all.found(new Answer.BestFound(best.plan(), OptionalDouble.empty()));
    }
  }
}
