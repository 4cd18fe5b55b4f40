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

import io.frostlot.plan.Order;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.DateBasis;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shipping is 5.00 for the first box and 3.00 for each further one, packing 2.00 an order. */
class FreeShippingTest {
  private static final Shipping CHARGES =
      new Shipping(
          new Shipping.Rate(Money.ZERO, Money.of(5), Money.of(3)),
          new Shipping.Packing(Money.of(2), Money.ZERO),
          List.of(),
          List.of());

  private static OrderTerms.FreeShipping from(int value, OrderTerms.Charge... waives) {
    return from(Period.ALWAYS, value, waives);
  }

  private static OrderTerms.FreeShipping from(Period when, int value, OrderTerms.Charge... waives) {
    return new OrderTerms.FreeShipping(
        when,
        DateBasis.ORDER,
        new OrderTerms.Threshold(Money.of(value), OrderTerms.Subtotal.AFTER_DISCOUNT),
        Set.of(waives));
  }

  private static SmallSupplier source(Pack pack, OrderTerms.FreeShipping... free) {
    return SmallSupplier.selling(pack)
        .shipping(CHARGES)
        .freeShipping(free)
        .delivery(SmallSupplier.CARRIER);
  }

  /** From 10.00 on no shipping, from 20.00 on no packing either. */
  @ParameterizedTest(name = "{0} comes to {1}")
  @CsvSource({"9.99, 16.99", "10.00, 12.00", "19.99, 21.99", "20.00, 20.00"})
  void a_threshold_is_reached_at_its_value_exactly(String price, String total) {
    Pack one = pack(MOUSE, 1, price);
    SmallSupplier source =
        source(
            one,
            from(10, OrderTerms.Charge.SHIPPING),
            from(20, OrderTerms.Charge.SHIPPING, OrderTerms.Charge.PACKING));
    SmallWorld world = new SmallWorld(1, source).need(1, 1);
    ByHand plan = new ByHand(world.world()).sent(1, boxes(1), packs(one, 1));
    allowed(plan.eat("day 1", "O1"), total);
    assertThat(optimum(world)).isEqualTo(costs(total));
  }

  /** Three boxes, of which shipping is 11.00: 12.00 + 2.00. */
  @Test
  void all_boxes_are_freed() {
    Pack four = pack(MOUSE, 1, "4.00");
    Boxing oneEach =
        new Boxing(Boxing.Way.BY_TOTAL, new Boxing.Limits(Grams.UNLIMITED, Litres.UNLIMITED, 1), 9);
    SmallSupplier source = source(four, from(10, OrderTerms.Charge.SHIPPING)).boxing(oneEach);
    SmallWorld world = new SmallWorld(1, source).need(1, 3);
    ByHand plan = new ByHand(world.world()).sent(1, boxes(3), packs(four, 3));
    allowed(plan.eat("day 1", "O1"), "14");
    assertThat(optimum(world)).isEqualTo(costs("14"));
  }

  /** Four mice are 8.00 and 7.00 to pay; with a fifth they are 10.00 and 2.00. */
  @Test
  void an_order_is_filled_up_where_that_saves_more_than_it_costs() {
    SmallWorld world =
        new SmallWorld(1, source(SINGLE, from(10, OrderTerms.Charge.SHIPPING))).need(1, 4);
    ByHand plan = new ByHand(world.world()).sent(1, boxes(1), packs(SINGLE, 5));
    allowed(plan.eat("day 1", "O1"), "12");
    assertThat(optimum(world)).isEqualTo(costs("12"));
  }

  /** 11.00 less 10 % are 9.90, and 7.00 to pay; without the discount 11.00 and 2.00. */
  @Test
  void a_discount_is_declined_where_free_shipping_is_worth_more() {
    Pack eleven = pack(MOUSE, 1, "11.00");
    OrderTerms.Discount tenth =
        new OrderTerms.Discount(
            "d",
            Period.ALWAYS,
            DateBasis.ORDER,
            OrderTerms.Subtotal.GOODS,
            List.of(new OrderTerms.Tier(Money.of(10), Percent.of("10"), Money.ZERO)),
            true);
    SmallSupplier source = source(eleven, from(10, OrderTerms.Charge.SHIPPING)).discounts(tenth);
    SmallWorld world = new SmallWorld(1, source).need(1, 1);
    ByHand taken = new ByHand(world.world());
    Order discounted = new Order(taken.slot(1), List.of(packs(eleven, 1)), Set.of("d"), boxes(1));
    allowed(taken.order(discounted).eat("day 1", "O1"), "16.90");
    ByHand declined = new ByHand(world.world()).sent(1, boxes(1), packs(eleven, 1));
    allowed(declined.eat("day 1", "O1"), "13");
    assertThat(optimum(world)).isEqualTo(costs("13"));
  }

  /** On day 2 only; prey keeps a day, five mice each: 10.00 + 7.00, then 10.00 + 2.00. */
  @Test
  void a_threshold_holds_on_its_days() {
    SmallSupplier source =
        source(SINGLE, from(SmallWorld.days(2, 2), 10, OrderTerms.Charge.SHIPPING));
    SmallWorld world =
        new SmallWorld(2, source)
            .freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(1)))
            .need(1, 5)
            .need(2, 5);
    ByHand plan = new ByHand(world.world()).sent(1, boxes(1), packs(SINGLE, 5));
    plan.sent(2, boxes(1), packs(SINGLE, 5)).eat("day 1", "O1").eat("day 2", "O2");
    allowed(plan, "29");
    assertThat(optimum(world)).isEqualTo(costs("29"));
  }
}
