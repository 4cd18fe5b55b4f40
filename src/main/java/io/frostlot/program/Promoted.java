package io.frostlot.program;

import io.frostlot.plan.Demands;
import io.frostlot.plan.Order;
import io.frostlot.plan.Pledge;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Slot;
import io.frostlot.units.Litres;
import io.frostlot.units.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The same packs of the same deliveries under the promotions with which they cost least: the one
 * program of a world in which nobody eats, these packs are bought anyway, and all have room.
 */
final class Promoted {
  private static final int DAYS = 36_500;
  private final World world;

  Promoted(World world) {
    this.world = world;
  }

  /** The orders as they were where nothing better is found within the budget. */
  List<Order> of(List<Order> orders, Scip.Budget budget) {
    Program program = Rules.program(bought(orders));
    Scip.Task task = Scip.Task.of(program.model().objective(Level.MONEY), List.of(), false, budget);
    Scip.End end = Scip.minimise(program.model(), task);
    return end.found() ? new PlanBuilder(program, end.point()).build(true).orders() : orders;
  }

  private World bought(List<Order> orders) {
    List<Pledge> pledges = new ArrayList<>();
    Set<Slot> slots = new TreeSet<>();
    for (Order order : orders) {
      Slot slot = order.slot();
      slots.add(slot);
      Period day = new Period(slot.ordered(), slot.ordered());
      order
          .packsById()
          .forEach(
              (pack, packs) ->
                  pledges.add(
                      new Pledge(
                          slot.supplier(), Set.of(pack), day, new Pledge.Packs(packs, packs))));
    }
    Scenario scenario = world.scenario();
    Policy policy = scenario.policy();
    Policy.Charges charges = policy.charges();
    Freezer large = new Freezer("all", Litres.UNLIMITED, "deep", Freezer.Life.of(DAYS), true);
    return world
        .withScenario(
            scenario
                .withLarder(new Scenario.Larder(List.of(large), List.of(), List.of()))
                .withPolicy(
                    policy
                        .withTail(Policy.Tail.NONE)
                        .withSafety(Policy.Safety.NONE)
                        .withAdequacy(Policy.Adequacy.NONE)
                        .withCharges(
                            Policy.Charges.NONE.withEffort(
                                charges.order(), charges.deliveryDay()))))
        .withMeals(Demands.of(List.of()))
        .withSlots(List.copyOf(slots))
        .withPledges(pledges)
        .withoutMoves();
  }
}
