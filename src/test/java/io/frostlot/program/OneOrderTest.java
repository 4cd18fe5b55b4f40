package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.Faces.unmet;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.pack;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Order;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Slot;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Boxes leave every day, one shop day after the order, and prey keeps one day: what comes on
 * Saturday, Sunday or Monday (days 4, 5, 6) is all ordered on Friday (day 3).
 */
class OneOrderTest {
  private static final String RULE = "one-order";
  private static final Delivery A_SHOP_DAY_AHEAD =
      new Delivery.Shipped(
          new Delivery.Lead(1, true, 0, List.of()),
          Set.of(DayOfWeek.values()),
          new Delivery.Transit(0, 0));

  private static SmallSupplier source(String id) {
    return SmallSupplier.named(id, SINGLE).delivery(A_SHOP_DAY_AHEAD);
  }

  private static SmallWorld needs(int oneDay, int other) {
    return new SmallWorld(6, source("source"))
        .freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(1)))
        .need(oneDay, 1)
        .need(other, 1);
  }

  private static ByHand both(ByHand plan, Slot first, Slot second) {
    return plan.order(order(first, packs(SINGLE, 1))).order(order(second, packs(SINGLE, 1)));
  }

  private static Order order(Slot slot, Order.Line... lines) {
    return new Order(slot, List.of(lines), Set.of(), ByHand.boxes(1));
  }

  private static Slot arriving(ByHand plan, int day) {
    return plan.world().slots().stream()
        .filter(slot -> slot.arrivesLatest().equals(SmallWorld.day(day)))
        .findFirst()
        .orElseThrow();
  }

  /** Thursday's is ordered on Wednesday and Friday's on Thursday: one piece each, 4.00. */
  @Test
  void orders_on_two_days_are_two_orders() {
    SmallWorld world = needs(2, 3);
    ByHand plan = new ByHand(world.world());
    both(plan, plan.slot(1), plan.slot(2)).eat("day 2", "O1").eat("day 3", "O2");
    allowed(plan, "4");
    assertThat(optimum(world)).isEqualTo(costs("4"));
  }

  /** Saturday's and Monday's would both be ordered on Friday: one meal is not met, 2.00. */
  @Test
  void a_second_order_of_one_day_is_refused() {
    SmallWorld world = needs(4, 6);
    ByHand plan = new ByHand(world.world());
    both(plan, arriving(plan, 4), arriving(plan, 6)).eat("day 4", "O1").eat("day 6", "O2");
    refused(plan, RULE);
    assertThat(optimum(world)).isEqualTo(unmet(1, "2"));
  }

  /** As above, but another supplier can be asked on the same day: 4.00. */
  @Test
  void each_supplier_has_an_order_a_day() {
    SmallWorld world =
        new SmallWorld(6, source("source"), source("stream"))
            .freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(1)))
            .need(4, 1)
            .need(6, 1);
    assertThat(optimum(world)).isEqualTo(costs("4"));
  }

  /** Five in a pack at 8.00: five are one pack, six are two. */
  @Test
  void packs_are_bought_whole() {
    SmallSupplier fives = SmallSupplier.selling(pack(MOUSE, 5, "8.00"));
    assertThat(optimum(new SmallWorld(1, fives).need(1, 5))).isEqualTo(costs("8"));
    assertThat(optimum(new SmallWorld(1, fives).need(1, 6))).isEqualTo(costs("16"));
  }

  @Test
  void an_order_holds_rows_of_the_price_sheet_once_each() {
    SmallWorld world = new SmallWorld(2, SmallSupplier.selling(SINGLE)).need(1, 2);
    allowed(new ByHand(world.world()).order(1, packs(SINGLE, 2)).eat("day 1", "O1"), "4");
    refused(new ByHand(world.world()).order(1), RULE);
    refused(new ByHand(world.world()).order(1, packs(SINGLE, 1), packs(SINGLE, 1)), RULE);
    refused(new ByHand(world.world()).order(1, packs(pack(MOUSE, 2, "3.00"), 1)), RULE);
  }

  @Test
  void an_order_is_for_a_possible_delivery() {
    ByHand plan = new ByHand(needs(2, 3).world());
    Slot slot = plan.slot(1);
    Slot sooner =
        new Slot(slot.supplier(), slot.ordered(), slot.ordered(), slot.ordered(), slot.ordered());
    refused(plan.order(order(sooner, packs(SINGLE, 1))), RULE);
  }
}
