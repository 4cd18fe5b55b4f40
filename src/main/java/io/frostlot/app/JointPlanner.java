package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.PutTogether;
import io.frostlot.program.Watch;
import io.frostlot.supply.Slot;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Plans a joint world in two steps: first with only the deliveries that members would have alone,
 * or those near them, which are few; then with all.
 */
final class JointPlanner {
  private static final int NEAR_DAYS = 3;
  private static final int PARTS = 2;
  private final Planner planner;
  private final Watch watch;

  JointPlanner(Planner planner, Watch watch) {
    this.planner = planner;
    this.watch = watch;
  }

  /**
   * The better of both answers, with what is known about how good it is.
   *
   * @param alone members' own plans; put together they are where it begins
   */
  Answer plan(World world, Map<Keeper, Plan> alone, Limits limits) {
    List<Plan> known = new ArrayList<>(PutTogether.of(world, alone).stream().toList());
    List<Slot> few = world.slots().stream().filter(slot -> isNear(world, slot, alone)).toList();
    if (few.isEmpty() || few.size() == world.slots().size()) {
      return planner.planFrom(known, world, limits, watch);
    }
    Answer first = planner.planFrom(known, world.withSlots(few), limits.part(PARTS), watch);
    if (first instanceof Answer.WithPlan found) {
      known.add(0, found.plan().plan());
    }
    Answer all =
        watch.stop()
            ? new Answer.NothingFound()
            : planner.planFrom(known, world, limits.part(PARTS), watch);
    return better(first, all);
  }

  private static boolean isNear(World world, Slot slot, Map<Keeper, Plan> alone) {
    Optional<String> buyer = Optional.ofNullable(world.joint().buyers().get(slot.supplier()));
    return alone.entrySet().stream()
        .filter(member -> buyer.isEmpty() || buyer.get().equals(member.getKey().name()))
        .flatMap(member -> member.getValue().orders().stream())
        .map(Order::slot)
        .anyMatch(own -> isNear(slot, own, buyer.isPresent()));
  }

  private static boolean isNear(Slot slot, Slot own, boolean fetched) {
    long days = Math.abs(ChronoUnit.DAYS.between(slot.ordered(), own.ordered()));
    return fetched
        ? slot.supplier().startsWith(own.supplier() + " ") && days == 0
        : slot.supplier().equals(own.supplier()) && days <= NEAR_DAYS;
  }

  /** A bound of the whole holds for the other plan too, where both are equal before money. */
  private static Answer better(Answer first, Answer all) {
    if (!(first instanceof Answer.WithPlan few)) {
      return all;
    }
    if (!(all instanceof Answer.WithPlan whole)) {
      return new Answer.BestFound(few.plan(), OptionalDouble.empty());
    }
    if (whole.plan().standing().compareTo(few.plan().standing()) <= 0) {
      return whole;
    }
    boolean same = few.plan().standing().sameBeforeMoney(whole.plan().standing());
    return new Answer.BestFound(few.plan(), same ? whole.bound() : OptionalDouble.empty());
  }
}
