package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.units.Percent;
import org.junit.jupiter.api.Test;

class LoosenedTest {
  @Test
  void leaving_the_margins_out_leaves_everything_else_as_it_is() {
    World room = HandmadeRoom.world();
    Policy strict =
        room.scenario()
            .policy()
            .withSafety(new Policy.Safety(2, Percent.of("5")))
            .withAdequacy(new Policy.Adequacy(true, Percent.of("97"), Percent.of("105")));
    World world = room.withScenario(room.scenario().withPolicy(strict));

    assertThat(Loosened.of(world))
        .filteredOn(it -> it.says().equals("without safety margins"))
        .singleElement()
        .extracting(it -> it.world().scenario().policy())
        .isEqualTo(strict.withSafety(Policy.Safety.NONE));
  }
}
