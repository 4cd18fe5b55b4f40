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
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Sale;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sales of a row whose packs have several prices in one order: two single mice at 2.00 each, from
 * the third on 1.00 each.
 */
class SaleStepsTest {
  private static final PriceBreak STEPS =
      new PriceBreak(
          SINGLE.id(),
          PriceBreak.Counting.INCREMENTAL,
          List.of(new PriceBreak.Step(3, Money.of("1.00"))));
  private static final Sale.Terms HALF = new Sale.PercentOff(Percent.of("50"));

  private static Sale sale(String id, Sale.Terms terms, int mostPacks) {
    Sale.Limits limits = new Sale.Limits(mostPacks, Pack.UNLIMITED);
    return new Sale(id, Period.ALWAYS, DateBasis.ORDER, Set.of(), terms, limits, true);
  }

  private static SmallSupplier selling(Sale... sales) {
    return SmallSupplier.selling(SINGLE).breaks(STEPS).sales(sales);
  }

  /** Room for no more than is needed. */
  private static SmallWorld world(int pieces, SmallSupplier supplier) {
    return new SmallWorld(1, supplier)
        .freezers(SmallWorld.freezer("A", String.valueOf(pieces), Freezer.Life.of(9)))
        .need(1, pieces);
  }

  private static ByHand buying(SmallWorld world, int packs, Map<String, Integer> underSale) {
    Order.Line line = packs(SINGLE, packs, underSale);
    return new ByHand(world.world()).order(1, line).eat("day 1", "O1");
  }

  /**
   * 2.00, 2.00, 1.00: under the sale 1.00 comes off the first, then the second, 0.50 off the third.
   */
  @ParameterizedTest(name = "{0} under the sale: {1}")
  @CsvSource({"1, 4.00", "2, 3.00", "3, 2.50"})
  void the_dearest_are_bought_under_a_sale_first(int most, String cost) {
    SmallWorld world = world(3, selling(sale("s", HALF, most)));
    allowed(buying(world, 3, Map.of("s", most)), cost);
    assertThat(optimum(world)).isEqualTo(costs(cost));
  }

  /**
   * Three cost 5.00, one of them at half price. It is one at 2.00, so 3.00 stay regular and goods
   * are 4.00; were it the one at 1.00, 4.00 would stay regular, and goods 4.50. So the sale is
   * declined.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({"REGULAR_GOODS, 4.00", "GOODS, 4.50"})
  void nobody_chooses_which_for_a_higher_order_value(OrderTerms.Subtotal base, String minimum) {
    SmallWorld world =
        world(
            3,
            selling(sale("s", HALF, 1)).minimum(new OrderTerms.Threshold(Money.of(minimum), base)));
    refused(buying(world, 3, Map.of("s", 1)), "minimum-order");
    allowed(buying(world, 3, Map.of()), "5");
    assertThat(optimum(world)).isEqualTo(costs("5"));
  }

  /**
   * Half price for the first two (1.00 each), then 0.80 in place of 1.00: 2.80. The other way about
   * it would be 0.80 + 1.00 + 0.50.
   */
  @Test
  void sales_have_their_packs_in_the_order_of_their_names() {
    Sale last = sale("b", new Sale.PriceOf(Money.of("0.80")), 1);
    SmallWorld world = world(3, selling(last, sale("a", HALF, 2)));
    allowed(buying(world, 3, Map.of("a", 2, "b", 1)), "2.80");
    assertThat(optimum(world)).isEqualTo(costs("2.80"));
  }

  /**
   * Three for the price of two: of 2.00, 2.00, 1.00 the last is free. Two for the price of one: of
   * four the last two, at 1.00; with two of them under the sale one at 2.00.
   */
  @ParameterizedTest(name = "{0} for {1}: {3} of {2} packs, {4}, least {5}")
  @CsvSource({"3, 2, 3, 3, 4, 4", "2, 1, 4, 4, 4, 4", "2, 1, 3, 3, 4, 3", "2, 1, 3, 2, 3, 3"})
  void the_cheapest_of_a_group_are_free(
      int take, int pay, int needed, int under, String cost, String least) {
    SmallWorld world =
        world(needed, selling(sale("s", new Sale.TakeAndPay(take, pay), Pack.UNLIMITED)));
    allowed(buying(world, needed, Map.of("s", under)), cost);
    assertThat(optimum(world)).isEqualTo(costs(least));
  }
}
