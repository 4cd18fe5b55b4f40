package io.frostlot.program;

import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.day;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Cutting;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Waiting;
import io.frostlot.plan.World;
import io.frostlot.storage.PlacedLot;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Bo, who needs five mice on day 3, has five under way; Ann needs five on day 1. Bags of ten at
 * 10.00 may not be cut: one for Ann is enough, and the relaxation for bounds must not say more.
 */
class UnderWayOfEachTest {
  private static World world() {
    World without = JointByHand.world(3, new Cutting(Map.of(), false), Set.of(), Waiting.NONE);
    Scenario.Larder larder = without.scenario().larder();
    PlacedLot own = new PlacedLot("bo's box", MOUSE, 5, day(2), day(2));
    Joint joint = without.joint();
    Map<String, String> whose = new HashMap<>(joint.keepers());
    whose.put(own.id(), "bo");
    return without
        .withScenario(
            without
                .scenario()
                .withLarder(new Scenario.Larder(larder.freezers(), larder.stock(), List.of(own))))
        .withJoint(new Joint(whose, joint.buyers(), joint.cutting(), joint.collecting()));
  }

  @Test
  void what_is_under_way_is_eaten_by_its_keeper() {
    World world = world();
    assertThat(LevelByLevel.comesTo(Optional.of(Faces.costs("10")), world, Rules.program(world)))
        .isTrue();
  }

  @Test
  void the_relaxation_with_all_freezers_one_knows_it_too() {
    World world = world();
    Program coarse = new Coarse(world).program();
    assertThat(LevelByLevel.comesTo(Optional.of(Faces.costs("10")), world, coarse)).isTrue();
  }
}
