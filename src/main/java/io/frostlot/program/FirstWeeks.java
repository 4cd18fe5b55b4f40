package io.frostlot.program;

import io.frostlot.plan.World;
import java.time.LocalDate;

/**
 * A relaxation for the levels before money: the world without the meals and deliveries after its
 * first weeks. What is left out could only add to what falls short.
 */
final class FirstWeeks {
  private static final int DAYS = 35;

  private FirstWeeks() {}

  static World of(World world) {
    LocalDate last = world.scenario().planning().from().plusDays(DAYS - 1L);
    return new World(
        world.scenario(),
        world.demands().stream()
            .filter(demand -> !demand.tail() && !demand.meal().days().latest().isAfter(last))
            .toList(),
        world.slots().stream().filter(slot -> !slot.arrivesLatest().isAfter(last)).toList(),
        world.items(),
        world.joint());
  }
}
