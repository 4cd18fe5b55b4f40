package io.frostlot.program;

import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;

/**
 * A relaxation for the levels before money: the world without the meals and deliveries after its
 * first weeks. What is left out could only add to what falls short.
 */
final class FirstWeeks {
  private static final int DAYS = 35;
  private static final double WHOLE = 1e-5;

  private FirstWeeks() {}

  static World of(World world) {
    Scenario scenario = world.scenario();
    LocalDate from = scenario.planning().from();
    LocalDate to = scenario.planning().to();
    LocalDate last = to.isBefore(from.plusDays(DAYS)) ? to : from.plusDays(DAYS - 1L);
    return world
        .withScenario(scenario.withPlanning(new Period(from, last)))
        .withDemands(
            world.demands().stream()
                .filter(demand -> !demand.tail() && !demand.meal().days().latest().isAfter(last))
                .toList())
        .withSlots(
            world.slots().stream().filter(slot -> !slot.arrivesLatest().isAfter(last)).toList())
        .withPledges(List.of());
  }

  /**
   * At least so much falls short.
   *
   * @param held rows that hold the levels before
   */
  static double shortfall(World world, Function<Model, List<Model.Row>> held, Scip.Budget budget) {
    Model model = Rules.program(of(world)).model();
    Linear amount = model.objective(Level.SHORTFALL);
    Scip.End end = Scip.minimise(model, Scip.Task.of(amount, held.apply(model), true, budget));
    return end.found() ? Math.max(0, Math.ceil(end.bound() - WHOLE)) : 0;
  }
}
