package io.frostlot.program;

import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import io.frostlot.units.Percent;
import java.math.BigDecimal;
import java.util.List;

/**
 * A simpler world of the same deliveries, to choose packs in: freezers taken for one, some of their
 * room kept back for what rounding up to whole packs takes, and the tail left out where only a
 * first plan is wanted. Its linear programs are half as large or less. Packs chosen there are then
 * put to the true program, so that nothing rests on what was left out.
 *
 * @param keptBack percent of the room
 * @param tail is the tail looked at?
 * @param caution days by which more is asked for safety, and times by which the margin is more
 *     there, since whole pieces serve less well than parts of them
 */
record Sketch(int keptBack, boolean tail, int caution) {
  /** With no more safety than is asked for. */
  Sketch(int keptBack, boolean tail) {
    this(keptBack, tail, 0);
  }

  World of(World world) {
    World pool = cautious(Pool.of(world), caution);
    Scenario.Larder larder = pool.scenario().larder();
    List<Freezer> freezers = larder.freezers().stream().map(this::smaller).toList();
    Scenario scenario = pool.scenario().withLarder(larder.withFreezers(freezers));
    World smaller = pool.withScenario(scenario);
    if (tail) {
      return smaller;
    }
    return smaller
        .withScenario(scenario.withPolicy(scenario.policy().withTail(new Policy.Tail(0))))
        .withMeals(world.meals().withoutTail());
  }

  /** The same world with more asked for safety, where any is. */
  static World cautious(World world, int caution) {
    Policy policy = world.scenario().policy();
    Policy.Safety asked = policy.safety();
    int days = asked.coverDays() == 0 ? 0 : asked.coverDays() + caution;
    BigDecimal margin = asked.margin().value().multiply(BigDecimal.valueOf(1L + caution));
    Policy.Safety safety = new Policy.Safety(days, new Percent(margin), asked.secondFreezer());
    return world.withScenario(world.scenario().withPolicy(policy.withSafety(safety)));
  }

  private Freezer smaller(Freezer freezer) {
    return freezer.withRoom(
        litres ->
            litres.isUnlimited()
                ? litres
                : new Litres(litres.microlitres() / 100 * (100 - keptBack)));
  }
}
