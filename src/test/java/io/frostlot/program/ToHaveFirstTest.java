package io.frostlot.program;

import static io.frostlot.program.SmallWorld.day;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Cutting;
import io.frostlot.plan.Standing;
import io.frostlot.plan.Waiting;
import io.frostlot.plan.World;
import io.frostlot.units.Litres;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Ann receives on day 1, Bo collects later; bags of ten at 10.00 may be cut. Ann needs five mice on
 * day 1, Bo five on day 3.
 */
class ToHaveFirstTest {
  private static final Waiting ROOM = new Waiting(Litres.UNLIMITED, 9);

  /** One bag does for both. */
  @Test
  void what_is_collected_in_time_is_eaten() {
    assertThat(comesTo(Faces.costs("10"), world(3))).isTrue();
  }

  /** Bo's meals are unmet, though Ann has what they want. */
  @Test
  void nothing_is_eaten_before_it_is_collected() {
    assertThat(comesTo(Faces.unmet(5, "10"), world(4))).isTrue();
  }

  private static boolean comesTo(Standing expected, World world) {
    return LevelByLevel.comesTo(Optional.of(expected), world, new Coarse(world).program());
  }

  private static World world(int collected) {
    return JointByHand.world(4, Cutting.ANY, Set.of(day(collected)), ROOM);
  }
}
