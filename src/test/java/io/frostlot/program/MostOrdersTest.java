package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.best;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.Faces.unmet;
import static io.frostlot.program.SmallWorld.SINGLE;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A mouse at 2.00 on each of days 1 and 2, from a source that delivers on the day. A night in the
 * freezer costs 0.30 a piece: two orders come to 4.00, one order for both days to 4.30.
 */
class MostOrdersTest {
  private static final Policy.Charges A_NIGHT =
      new Policy.Charges(Money.of("0.30"), Money.ZERO, Money.ZERO, Money.ZERO);
  private final World world =
      new SmallWorld(2, SmallSupplier.selling(SINGLE))
          .charges(A_NIGHT)
          .need(1, 1)
          .need(2, 1)
          .world();

  private static ByHand twice(World world) {
    return new ByHand(world)
        .order(1, packs(SINGLE, 1))
        .order(2, packs(SINGLE, 1))
        .eat("day 1", "O1")
        .eat("day 2", "O2");
  }

  @Test
  void without_a_limit_two_orders_are_best() {
    assertThat(best(world).standing()).isEqualTo(costs("4"));
    assertThat(best(world).plan().orders()).hasSize(2);
  }

  @Test
  void one_order_does_where_no_more_are_allowed() {
    World once = world.withMostOrders(1);
    assertThat(best(once).standing()).isEqualTo(costs("4.30"));
    assertThat(LevelByLevel.comesTo(Optional.of(costs("4.30")), once, rule -> true)).isTrue();
  }

  /** What is not met is worse than any money. */
  @Test
  void without_an_order_nothing_is_met() {
    assertThat(best(world.withMostOrders(0)).standing()).isEqualTo(unmet(2, "0"));
  }

  @Test
  void as_many_as_allowed_are_allowed_and_one_more_is_not() {
    allowed(twice(world.withMostOrders(2)), "4");
    refused(twice(world.withMostOrders(1)), "most-orders");
  }
}
