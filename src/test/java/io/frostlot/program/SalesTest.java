package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.SmallWorld.SINGLE;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Order;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.DateBasis;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single mice at 2.00, and sales of them. */
class SalesTest {
  private static final String RULE = "sales";
  private static final Sale.Terms AT_ONE = new Sale.PriceOf(Money.of(1));

  private static Sale sale(Sale.Terms terms, Sale.Limits limits) {
    return sale("s", terms, limits);
  }

  private static Sale sale(String id, Sale.Terms terms, Sale.Limits limits) {
    return new Sale(id, Period.ALWAYS, DateBasis.ORDER, Set.of(), terms, limits, true);
  }

  private static Sale onDays(Period when, DateBasis follows) {
    return new Sale("s", when, follows, Set.of(), AT_ONE, Sale.Limits.NONE, true);
  }

  private static SmallWorld world(int days, Sale... sales) {
    return new SmallWorld(days, SmallSupplier.selling(SINGLE).sales(sales));
  }

  private static Order.Line underSale(int packs, int underSale) {
    return packs(SINGLE, packs, Map.of("s", underSale));
  }

  /** A sale on days 2 and 3, prey that keeps a day, a piece a day: 2.00 + 1.00 + 1.00 + 2.00. */
  @Test
  void a_sale_holds_from_its_first_to_its_last_day() {
    SmallWorld world =
        world(4, onDays(SmallWorld.days(2, 3), DateBasis.ORDER))
            .freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(1)));
    for (int day = 1; day <= 4; day++) {
      world.need(day, 1);
    }
    allowed(new ByHand(world.world()).order(2, underSale(1, 1)), "1");
    allowed(new ByHand(world.world()).order(3, underSale(1, 1)), "1");
    refused(new ByHand(world.world()).order(1, underSale(1, 1)), RULE, "combining");
    refused(new ByHand(world.world()).order(4, underSale(1, 1)), RULE, "combining");
    assertThat(optimum(world)).isEqualTo(costs("6"));
  }

  /** Ordered on day 1, shipped on day 2, there on day 3 or 4. */
  @ParameterizedTest(name = "a sale of day {1} that follows the {0} date: {2}")
  @CsvSource({
    "ORDER, 1, 1",
    "ORDER, 2, 2",
    "SHIP, 2, 1",
    "SHIP, 1, 2",
    "ARRIVAL, 3, 1",
    "ARRIVAL, 4, 2"
  })
  void a_sale_follows_the_date_it_says(DateBasis follows, int day, String cost) {
    Delivery delivery =
        new Delivery.Shipped(
            new Delivery.Lead(1, false, 0, List.of()),
            Set.of(DayOfWeek.values()),
            new Delivery.Transit(1, 2));
    SmallSupplier source =
        SmallSupplier.selling(SINGLE)
            .sales(onDays(SmallWorld.days(day, day), follows))
            .delivery(delivery);
    assertThat(optimum(new SmallWorld(4, source).need(4, 1))).isEqualTo(costs(cost));
  }

  /** Two an order, so three on one day are 1.00 + 1.00 + 2.00, five on two days 4 x 1.00 + 2.00. */
  @Test
  void an_order_takes_as_many_packs_as_the_sale_allows() {
    Sale two = sale(AT_ONE, new Sale.Limits(2, Pack.UNLIMITED));
    SmallWorld one = world(1, two).need(1, 3);
    allowed(new ByHand(one.world()).order(1, underSale(3, 2)).eat("day 1", "O1"), "4");
    refused(new ByHand(one.world()).order(1, underSale(3, 3)).eat("day 1", "O1"), RULE);
    assertThat(optimum(one)).isEqualTo(costs("4"));
    assertThat(optimum(world(2, two).need(2, 5))).isEqualTo(costs("6"));
  }

  /** Three in all, so four are 3 x 1.00 + 2.00 on however many days. */
  @Test
  void all_orders_together_take_as_many_packs_as_the_sale_has() {
    SmallWorld world = world(2, sale(AT_ONE, new Sale.Limits(Pack.UNLIMITED, 3))).need(2, 4);
    ByHand three = new ByHand(world.world()).order(1, underSale(2, 2)).order(2, underSale(2, 1));
    allowed(three.eat("day 2", 2, "O1").eat("day 2", 2, "O2"), "5");
    refused(new ByHand(world.world()).order(1, underSale(2, 2)).order(2, underSale(2, 2)), RULE);
    assertThat(optimum(world)).isEqualTo(costs("5"));
  }

  @Test
  void only_items_of_the_sale_are_bought_under_it() {
    Sale rats =
        new Sale(
            "s", Period.ALWAYS, DateBasis.ORDER, Set.of("Rat"), AT_ONE, Sale.Limits.NONE, true);
    SmallWorld world = world(1, rats).need(1, 1);
    refused(new ByHand(world.world()).order(1, underSale(1, 1)).eat("day 1", "O1"), RULE);
    assertThat(optimum(world)).isEqualTo(costs("2"));
  }

  @Test
  void nothing_is_bought_under_a_sale_that_the_order_does_not_take() {
    SmallWorld world = world(1, sale(AT_ONE, Sale.Limits.NONE)).need(1, 1);
    refused(new ByHand(world.world()).taking(Set.of(), 1, underSale(1, 1)), RULE);
    allowed(new ByHand(world.world()).taking(Set.of("s"), 1, underSale(1, 1)), "1");
  }

  /** At 3.00 in place of 2.00 nobody takes it. */
  @Test
  void a_sale_may_be_declined() {
    SmallWorld world = world(1, sale(new Sale.PriceOf(Money.of(3)), Sale.Limits.NONE)).need(1, 1);
    allowed(new ByHand(world.world()).order(1, underSale(1, 1)).eat("day 1", "O1"), "3");
    allowed(new ByHand(world.world()).order(1, packs(SINGLE, 1)).eat("day 1", "O1"), "2");
    assertThat(optimum(world)).isEqualTo(costs("2"));
  }

  /**
   * Three for the price of two: in one order 4.00, in two orders (prey keeps a day) all are paid.
   */
  @Test
  void a_group_is_of_one_order() {
    Sale threeForTwo = sale(new Sale.TakeAndPay(3, 2), Sale.Limits.NONE);
    SmallWorld one = world(1, threeForTwo).need(1, 3);
    allowed(new ByHand(one.world()).order(1, underSale(3, 3)).eat("day 1", "O1"), "4");
    allowed(new ByHand(one.world()).order(1, underSale(3, 2)).eat("day 1", "O1"), "6");
    assertThat(optimum(one)).isEqualTo(costs("4"));
    SmallWorld two =
        world(2, threeForTwo)
            .freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(1)))
            .need(1, 2)
            .need(2, 1);
    ByHand plan = new ByHand(two.world()).order(1, underSale(2, 2)).order(2, underSale(1, 1));
    allowed(plan.eat("day 1", "O1").eat("day 2", "O2"), "6");
    assertThat(optimum(two)).isEqualTo(costs("6"));
  }

  /** One pack at 0.50 under the one, one at 1.00 under the other, the third at 2.00. */
  @Test
  void each_pack_is_under_one_sale_at_most() {
    Sale.Limits one = new Sale.Limits(1, Pack.UNLIMITED);
    SmallWorld world =
        world(1, sale("s", AT_ONE, one), sale("t", new Sale.PriceOf(Money.of("0.50")), one))
            .need(1, 3);
    Order.Line line = packs(SINGLE, 3, Map.of("s", 1, "t", 1));
    allowed(new ByHand(world.world()).order(1, line).eat("day 1", "O1"), "3.50");
    assertThat(optimum(world)).isEqualTo(costs("3.50"));
  }
}
