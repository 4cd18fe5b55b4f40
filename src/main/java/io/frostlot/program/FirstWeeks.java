package io.frostlot.program;

import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.units.Period;
import java.time.LocalDate;

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
    Scenario first =
        new Scenario(
            scenario.name(),
            new Period(from, last),
            scenario.currency(),
            scenario.collection(),
            scenario.larder(),
            scenario.suppliers(),
            scenario.away(),
            scenario.policy());
    return new World(
        first,
        world.demands().stream()
            .filter(demand -> !demand.tail() && !demand.meal().days().latest().isAfter(last))
            .toList(),
        world.slots().stream().filter(slot -> !slot.arrivesLatest().isAfter(last)).toList(),
        world.items(),
        world.joint());
  }
}
