package io.frostlot.program;

import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import java.util.List;

/**
 * A simpler world of the same deliveries, to choose packs in: freezers taken for one, some of their
 * room kept back for what rounding up to whole packs takes, and the tail left out where only a
 * first plan is wanted. Its linear programs are half as large or less. Packs chosen there are then
 * put to the true program, so that nothing rests on what was left out.
 *
 * @param keptBack percent of the room
 * @param tail is the tail looked at?
 */
record Sketch(int keptBack, boolean tail) {
  World of(World world) {
    World pool = Pool.of(world);
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

  private Freezer smaller(Freezer freezer) {
    return freezer.withRoom(
        litres ->
            litres.isUnlimited()
                ? litres
                : new Litres(litres.microlitres() / 100 * (100 - keptBack)));
  }
}
