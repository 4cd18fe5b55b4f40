package io.frostlot.program;

import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.freezer;
import static io.frostlot.program.SmallWorld.pack;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.supply.PriceBreak;
import io.frostlot.units.Money;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Two mice and two rats on day 2 and again on day 4, pieces of a litre at 2.00 each, 10.00 of
 * effort an order, a freezer of four litres: two orders, 36.00.
 */
final class OrderRoomTest {
  private static final Item RAT = prey("Rat", "rat", 60);

  private static SmallWorld small() {
    Policy.Charges effort = Policy.Charges.NONE.withEffort(Money.of(10), Money.ZERO);
    return new SmallWorld(5, SmallSupplier.selling(SINGLE, pack(RAT, 1, "2.00")))
        .freezers(freezer("A", "4", Freezer.Life.of(9)))
        .need(MOUSE, 2, 2)
        .need(RAT, 2, 2)
        .need(MOUSE, 4, 2)
        .need(RAT, 4, 2)
        .charges(effort);
  }

  private static double relaxed(World world, boolean strengthened) {
    Program program = Rules.program(world);
    if (strengthened) {
      OrderRoom.add(world, program);
    }
    HeldLevels held = new HeldLevels();
    held.hold(Level.UNMET_MUST, 0);
    Model model = program.model();
    Linear money = model.objective(Level.MONEY);
    return Relaxation.minimise(model, money, held.rows(model), 60_000).orElseThrow().bound();
  }

  /** By hand: eight litres in all need two whole orders of four, also in parts of orders. */
  @Test
  void the_relaxation_opens_as_many_orders_as_freezers_need() {
    World world = small().world();
    assertThat(Faces.optimum(small())).isEqualTo(Faces.costs("36"));
    assertThat(relaxed(world, false)).isLessThan(35);
    assertThat(relaxed(world, true)).isCloseTo(36, within(1e-3));
  }

  /**
   * A freezer of four litres, and mice of a litre cost half from five on: nobody can buy five, so
   * two mice cost 4.00, also in parts of orders.
   */
  @Test
  void a_price_step_for_which_there_is_no_room_is_not_taken_in_part() {
    PriceBreak.Step five = new PriceBreak.Step(5, Money.of(1));
    SmallSupplier supplier =
        SmallSupplier.selling(SINGLE)
            .breaks(new PriceBreak(SINGLE.id(), PriceBreak.Counting.ALL_UNITS, List.of(five)));
    SmallWorld two =
        new SmallWorld(5, supplier)
            .freezers(freezer("A", "4", Freezer.Life.of(9)))
            .need(MOUSE, 2, 2);
    assertThat(OrderRoom.most(two.world(), two.world().slots().get(0), SINGLE)).isEqualTo(4);
    assertThat(relaxed(two.world(), false)).isCloseTo(4, within(1e-3));
    assertThat(Faces.optimum(two)).isEqualTo(Faces.costs("4"));
  }

  /** At night there is room for what was eaten on the day. */
  @Test
  void packs_are_not_held_to_the_room_where_freezers_are_checked_at_night() {
    World world = small().checkedAtNight().world();
    assertThat(OrderRoom.most(world, world.slots().get(0), SINGLE)).isEqualTo(Long.MAX_VALUE);
  }

  /** What could be bought in one order fits into a thousand litres. */
  @Test
  void nothing_is_said_where_all_fits() {
    assertSaysNothing(small().freezers(freezer("A", "1000", Freezer.Life.of(9))).world());
  }

  /** At night two pieces of an order of four are eaten, so more than four litres may have come. */
  @Test
  void nothing_is_said_where_freezers_are_checked_at_night() {
    assertSaysNothing(small().checkedAtNight().world());
  }

  private static void assertSaysNothing(World world) {
    Program program = Rules.program(world);
    List<Model.Row> before = List.copyOf(program.model().rows());
    OrderRoom.add(world, program);
    assertThat(program.model().rows()).isEqualTo(before);
  }
}
