package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.pack;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Policy;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * An order is reckoned at 2.00, a day on which something comes at 3.00. One shop sells mice at
 * 2.00, another rats at 4.00; a mouse is eaten on day 1, a rat on day 2.
 */
class EffortTest {
  private static final Item RAT = prey("Rat", "rat", 80);
  private static final Pack RATS = pack(RAT, 1, "4.00");

  private static SmallWorld world(int lifeDays) {
    return new SmallWorld(2, SmallSupplier.selling(SINGLE), SmallSupplier.named("stream", RATS))
        .freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(lifeDays)))
        .charges(new Policy.Charges(Money.ZERO, Money.of(2), Money.of(3), Money.ZERO))
        .need(1, 1)
        .need(RAT, 2, 1);
  }

  private static ByHand plan(SmallWorld world, int ratsOn) {
    ByHand plan = new ByHand(world.world()).order(1, packs(SINGLE, 1));
    plan.order(
        plan.world().slots().stream()
            .filter(slot -> slot.supplier().equals("stream"))
            .filter(slot -> slot.ordered().equals(SmallWorld.day(ratsOn)))
            .map(slot -> new Order(slot, List.of(packs(RATS, 1)), Set.of(), Order.Boxes.NONE))
            .findFirst()
            .orElseThrow());
    return plan.eat("day 1", "O1").eat("Rat day 2", "O2");
  }

  /** 6.00 for prey, 2 x 2.00 for the orders, one day at 3.00. */
  @Test
  void two_orders_that_come_on_one_day_are_one_delivery_day() {
    Books books = allowed(plan(world(9), 1));
    assertThat(books.total(Books.Account.CASH)).isEqualTo(Money.of(6));
    assertThat(books.total(Books.Account.RECKONED)).isEqualTo(Money.of(7));
    assertThat(optimum(world(9))).isEqualTo(costs("13"));
  }

  /** Where prey keeps a day the rat comes on day 2: two days at 3.00. */
  @Test
  void two_days_are_two_delivery_days() {
    allowed(plan(world(1), 2), "16");
    allowed(plan(world(9), 2), "16");
    assertThat(optimum(world(1))).isEqualTo(costs("16"));
  }
}
