package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Replay;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What a relaxation does not see: a plan leaves a meal unmet that pieces cut in two would have
 * served. Its deliveries with one more, the last of some supplier that comes in time for the meal.
 */
final class Supplements {
  private static final int MEALS = 3;
  private final World world;

  Supplements(World world) {
    this.world = world;
  }

  /** Sets of deliveries beside those of a plan; none where it meets all meals. */
  List<Set<Slot>> of(Answer.Judged plan) {
    if (plan.standing().unmet() == 0) {
      return List.of();
    }
    Set<Slot> own = new TreeSet<>(plan.plan().slots());
    List<Set<Slot>> sets = new ArrayList<>();
    Replay.of(world, plan.plan()).unmet().stream()
        .limit(MEALS)
        .forEach(unmet -> sets.addAll(beside(own, unmet.demand())));
    return sets;
  }

  /** One more for every meal that a plan leaves unmet, of each supplier; without the plan's own. */
  Set<Slot> all(Answer.Judged plan) {
    Set<Slot> own = new TreeSet<>(plan.plan().slots());
    return plan.standing().unmet() == 0
        ? Set.of()
        : Replay.of(world, plan.plan()).unmet().stream()
            .flatMap(unmet -> more(own, unmet.demand()).stream())
            .collect(Collectors.toCollection(TreeSet::new));
  }

  private List<Set<Slot>> beside(Set<Slot> own, Demand demand) {
    return more(own, demand).stream()
        .map(
            slot -> {
              Set<Slot> more = new TreeSet<>(own);
              more.add(slot);
              return more;
            })
        .toList();
  }

  private List<Slot> more(Set<Slot> own, Demand demand) {
    Set<String> items =
        demand.options().stream().map(option -> option.item().id()).collect(Collectors.toSet());
    return world.scenario().suppliers().stream()
        .filter(
            supplier ->
                supplier.sheet().packs().stream()
                    .flatMap(Pack::items)
                    .anyMatch(item -> items.contains(item.id())))
        .flatMap(
            supplier ->
                world.slots().stream()
                    .filter(slot -> slot.supplier().equals(supplier.id()))
                    .filter(slot -> isInTime(slot, demand))
                    .filter(slot -> !own.contains(slot))
                    .max(Comparator.comparing(Slot::arrivesLatest))
                    .stream())
        .toList();
  }

  /** Can pieces of it be in a freezer of the eater's keeper on the meal's last day? */
  private boolean isInTime(Slot slot, Demand demand) {
    Joint joint = world.joint();
    return world.scenario().larder().freezers().stream()
        .filter(freezer -> joint.feeds(freezer, joint.keeperOf(demand)))
        .flatMap(freezer -> joint.comings(slot, freezer).stream())
        .anyMatch(coming -> !coming.latest().isAfter(demand.meal().days().latest()));
  }
}
