package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.pack;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Order;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.DateBasis;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
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

/** No order below 10.00. */
class MinimumOrderTest {
  private static final String RULE = "minimum-order";
  private static final Pack FIVE = pack(MOUSE, 1, "5.00");

  private static OrderTerms.Threshold ten(OrderTerms.Subtotal base) {
    return new OrderTerms.Threshold(Money.of(10), base);
  }

  private static SmallWorld onePack(Pack pack) {
    return new SmallWorld(1, SmallSupplier.selling(pack).minimum(ten(OrderTerms.Subtotal.GOODS)))
        .need(1, 1);
  }

  @Test
  void an_order_of_exactly_the_minimum_is_taken() {
    Pack pack = pack(MOUSE, 1, "10.00");
    SmallWorld world = onePack(pack);
    allowed(new ByHand(world.world()).order(1, packs(pack, 1)).eat("day 1", "O1"), "10");
    assertThat(optimum(world)).isEqualTo(costs("10"));
  }

  /** At 9.99 it takes a second pack: 19.98. */
  @Test
  void an_order_a_cent_below_the_minimum_is_not_taken() {
    Pack pack = pack(MOUSE, 1, "9.99");
    SmallWorld world = onePack(pack);
    refused(new ByHand(world.world()).order(1, packs(pack, 1)).eat("day 1", "O1"), RULE);
    allowed(new ByHand(world.world()).order(1, packs(pack, 2)).eat("day 1", "O1"), "19.98");
    assertThat(optimum(world)).isEqualTo(costs("19.98"));
  }

  /** Prey keeps a day, so each day's three mice at 2.00 are filled up to 10.00. */
  @Test
  void each_order_reaches_the_minimum() {
    SmallWorld world =
        new SmallWorld(2, SmallSupplier.selling(SINGLE).minimum(ten(OrderTerms.Subtotal.GOODS)))
            .freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(1)))
            .need(1, 3)
            .need(2, 3);
    assertThat(optimum(world)).isEqualTo(costs("20"));
  }

  /** Four packs at 5.00, half price in a sale, 20 % off an order of any value. */
  private static SmallWorld reduced(OrderTerms.Subtotal base) {
    Sale half =
        new Sale(
            "s",
            Period.ALWAYS,
            DateBasis.ORDER,
            Set.of(),
            new Sale.PercentOff(Percent.of("50")),
            Sale.Limits.NONE,
            true);
    OrderTerms.Discount fifth =
        new OrderTerms.Discount(
            "d",
            Period.ALWAYS,
            DateBasis.ORDER,
            OrderTerms.Subtotal.GOODS,
            List.of(new OrderTerms.Tier(Money.ZERO, Percent.of("20"), Money.ZERO)),
            true);
    return new SmallWorld(
            1, SmallSupplier.selling(FIVE).sales(half).discounts(fifth).minimum(ten(base)))
        .need(1, 4);
  }

  private static ByHand taking(OrderTerms.Subtotal base, Set<String> taken, int inSale) {
    Order.Line four = packs(FIVE, 4, inSale == 0 ? Map.of() : Map.of("s", inSale));
    return new ByHand(reduced(base).world()).taking(taken, 1, four).eat("day 1", "O1");
  }

  /**
   * Regular goods: two packs outside the sale are 10.00; (10.00 + 5.00) less 20 %. Goods: all four
   * in the sale are 10.00, less 20 %. After discount: the same without the discount, 10.00.
   */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"REGULAR_GOODS, 12", "GOODS, 8", "AFTER_DISCOUNT, 10"})
  void the_minimum_looks_at_its_own_base(OrderTerms.Subtotal base, String cost) {
    assertThat(optimum(reduced(base))).isEqualTo(costs(cost));
  }

  @Test
  void what_does_not_count_for_the_base_is_left_out() {
    Set<String> both = Set.of("s", "d");
    allowed(taking(OrderTerms.Subtotal.REGULAR_GOODS, both, 2), "12");
    refused(taking(OrderTerms.Subtotal.REGULAR_GOODS, both, 3), RULE);
    allowed(taking(OrderTerms.Subtotal.GOODS, both, 4), "8");
    refused(taking(OrderTerms.Subtotal.AFTER_DISCOUNT, both, 4), RULE);
    allowed(taking(OrderTerms.Subtotal.AFTER_DISCOUNT, Set.of("s"), 4), "10");
  }
}
