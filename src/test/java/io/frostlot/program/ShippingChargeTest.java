package io.frostlot.program;

import static io.frostlot.program.ByHand.boxes;
import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.pack;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.storage.Freezer;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Mice for nothing, so that charges are all there is: 3.00 an order, 29.00 for the first box and
 * 10.00 for each further one; packing 1.00 an order and 2.00 a box; for what ships on days 2 and 3
 * 4.00 an order and 5.00 a box, on day 3 0.50 a box more; 6.00 for an order of days 1 and 2, 0.25
 * for each order.
 */
class ShippingChargeTest {
  private static final Pack GIVEN = pack(MOUSE, 1, "0");
  private static final Shipping ALL_KINDS =
      new Shipping(
          new Shipping.Rate(Money.of(3), Money.of(29), Money.of(10)),
          new Shipping.Packing(Money.of(1), Money.of(2)),
          List.of(
              new Shipping.Surcharge(SmallWorld.days(2, 3), Money.of(4), Money.of(5)),
              new Shipping.Surcharge(SmallWorld.days(3, 3), Money.ZERO, Money.of("0.50"))),
          List.of(
              new Shipping.OrderCharge(SmallWorld.days(1, 2), Money.of(6)),
              new Shipping.OrderCharge(Period.ALWAYS, Money.of("0.25"))));
  private static final Boxing ONE_EACH =
      new Boxing(Boxing.Way.BY_TOTAL, new Boxing.Limits(Grams.UNLIMITED, Litres.UNLIMITED, 1), 9);

  private static SmallWorld world(SmallSupplier source) {
    return new SmallWorld(4, source).freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(1)));
  }

  /**
   * Day 1: 3 + 29 + (1 + 2) + 6.25; a second box 10 + 2. Day 2: 4 and 5 a box more. Day 3: 0.50 a
   * box more than on day 2, but no 6. Day 4: neither.
   */
  @ParameterizedTest(name = "{1} boxes on day {0}: {2}")
  @CsvSource({
    "1, 1, 41.25",
    "1, 2, 53.25",
    "2, 1, 50.25",
    "2, 2, 67.25",
    "3, 2, 62.25",
    "4, 2, 47.25",
    "4, 3, 59.25"
  })
  void charges_are_paid_an_order_and_a_box_while_they_hold(int day, int boxes, String charges) {
    SmallWorld world =
        world(SmallSupplier.selling(GIVEN).boxing(ONE_EACH).shipping(ALL_KINDS)).need(day, boxes);
    ByHand plan = new ByHand(world.world()).sent(day, boxes(boxes), packs(GIVEN, boxes));
    allowed(plan.eat("day " + day, "O1"), charges);
    assertThat(optimum(world)).isEqualTo(costs(charges));
  }

  /** Fetched on day 1: 6.25, of the other kinds none. */
  @Test
  void what_is_fetched_costs_only_the_way() {
    SmallWorld world = world(SmallSupplier.selling(GIVEN).shipping(ALL_KINDS)).need(1, 3);
    allowed(new ByHand(world.world()).order(1, packs(GIVEN, 3)).eat("day 1", "O1"), "6.25");
    assertThat(optimum(world)).isEqualTo(costs("6.25"));
  }

  /** Ordered on day 2, shipped on day 4: the charge of day 2 and no surcharge, 35.00 + 6.25. */
  @Test
  void the_order_date_and_the_ship_date_are_told_apart() {
    Delivery twoDaysAhead =
        new Delivery.Shipped(
            new Delivery.Lead(2, false, 0, List.of()),
            Set.of(DayOfWeek.values()),
            new Delivery.Transit(0, 0));
    SmallSupplier source =
        SmallSupplier.selling(GIVEN).boxing(ONE_EACH).shipping(ALL_KINDS).delivery(twoDaysAhead);
    SmallWorld world = world(source).need(4, 1);
    ByHand plan = new ByHand(world.world()).sent(2, boxes(1), packs(GIVEN, 1));
    allowed(plan.eat("day 4", "O1"), "41.25");
    assertThat(optimum(world)).isEqualTo(costs("41.25"));
  }

  /** Two meals at 2.00 in one box for 29.00 rather than in two: 33.00, where prey keeps. */
  @Test
  void one_box_for_two_meals_costs_less_than_two() {
    Shipping flat =
        new Shipping(
            new Shipping.Rate(Money.ZERO, Money.of(29), Money.of(29)),
            Shipping.Packing.FREE,
            List.of(),
            List.of());
    SmallSupplier source =
        SmallSupplier.selling(SINGLE).shipping(flat).delivery(SmallSupplier.CARRIER);
    SmallWorld keeps = new SmallWorld(2, source).need(1, 1).need(2, 1);
    assertThat(optimum(keeps)).isEqualTo(costs("33"));
    assertThat(optimum(world(source).need(1, 1).need(2, 1))).isEqualTo(costs("62"));
  }
}
