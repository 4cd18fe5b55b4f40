package io.frostlot.program;

import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;

/**
 * A relaxation for the levels before money: the world without the meals and deliveries after its
 * first weeks. What is left out could only add to what falls short.
 */
final class FirstWeeks {
  private static final int DAYS = 35;

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
}
