package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.pack;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.supply.DateBasis;
import io.frostlot.supply.Item;
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

class OrderDiscountsTest {
  private static final String RULE = "order-discounts";
  private static final Item RAT = prey("Rat", "rat", 80);
  private static final Pack RATS = pack(RAT, 1, "4.00");

  private static OrderTerms.Discount discount(
      String id, OrderTerms.Subtotal base, OrderTerms.Tier... tiers) {
    return new OrderTerms.Discount(id, Period.ALWAYS, DateBasis.ORDER, base, List.of(tiers), true);
  }

  private static OrderTerms.Tier percent(int from, String percent) {
    return new OrderTerms.Tier(Money.of(from), Percent.of(percent), Money.ZERO);
  }

  private static OrderTerms.Tier amount(int from, int off) {
    return new OrderTerms.Tier(Money.of(from), Percent.ZERO, Money.of(off));
  }

  private static SmallSupplier tenths(Pack pack) {
    return SmallSupplier.selling(pack)
        .discounts(discount("d", OrderTerms.Subtotal.GOODS, percent(10, "10"), percent(20, "20")));
  }

  /**
   * A pack at that price, 10 % off from 10.00, 20 % from 20.00; 10 % of 19.99 is 1.999, half-up
   * 2.00.
   */
  @ParameterizedTest(name = "{0} comes to {1}")
  @CsvSource({"9.99, 9.99", "10.00, 9.00", "19.99, 17.99", "20.00, 16.00"})
  void a_tier_is_reached_at_its_value_exactly(String price, String total) {
    Pack one = pack(MOUSE, 1, price);
    SmallWorld world = new SmallWorld(1, tenths(one)).need(1, 1);
    Set<String> taken = price.equals("9.99") ? Set.of() : Set.of("d");
    allowed(new ByHand(world.world()).taking(taken, 1, packs(one, 1)).eat("day 1", "O1"), total);
    assertThat(optimum(world)).isEqualTo(costs(total));
  }

  @Test
  void a_discount_is_not_taken_a_cent_below_its_value() {
    Pack one = pack(MOUSE, 1, "9.99");
    SmallWorld world = new SmallWorld(1, tenths(one)).need(1, 1);
    refused(new ByHand(world.world()).taking(Set.of("d"), 1, packs(one, 1)), RULE);
  }

  @Test
  void a_discount_may_be_declined() {
    Pack one = pack(MOUSE, 1, "10.00");
    SmallWorld world = new SmallWorld(1, tenths(one)).need(1, 1);
    allowed(new ByHand(world.world()).order(1, packs(one, 1)).eat("day 1", "O1"), "10");
  }

  /** Half price on rats: four mice are 8.00, two rats 4.00. */
  private static SmallWorld ratsInSale(OrderTerms.Subtotal base) {
    Sale half =
        new Sale(
            "s",
            Period.ALWAYS,
            DateBasis.ORDER,
            Set.of("Rat"),
            new Sale.PercentOff(Percent.of("50")),
            Sale.Limits.NONE,
            true);
    SmallSupplier source =
        SmallSupplier.selling(SINGLE, RATS)
            .sales(half)
            .discounts(discount("d", base, percent(10, "25")));
    return new SmallWorld(1, source).need(1, 4).need(RAT, 1, 2);
  }

  private static ByHand both(SmallWorld world, int mice, int ratsInSale) {
    return new ByHand(world.world())
        .taking(Set.of("s", "d"), 1, packs(SINGLE, mice), packs(RATS, 2, Map.of("s", ratsInSale)))
        .eat("day 1", "O1")
        .eat("Rat day 1", "O2");
  }

  /** All goods: 12.00 less a quarter. */
  @Test
  void goods_in_a_sale_count_where_all_goods_do() {
    SmallWorld world = ratsInSale(OrderTerms.Subtotal.GOODS);
    allowed(both(world, 4, 2), "9");
    assertThat(optimum(world)).isEqualTo(costs("9"));
  }

  /**
   * Goods in no sale: 8.00 are too little. A fifth mouse makes 10.00, less a quarter, and 4.00 for
   * the rats: 11.50. One rat outside the sale makes 12.00, less a quarter, and 2.00: 11.00. Without
   * the discount 12.00, without the sale 16.00 less a quarter, 12.00.
   */
  @Test
  void goods_in_a_sale_do_not_count_where_only_regular_goods_do() {
    SmallWorld world = ratsInSale(OrderTerms.Subtotal.REGULAR_GOODS);
    refused(both(world, 4, 2), RULE);
    allowed(both(world, 5, 2), "11.50");
    allowed(both(world, 4, 1), "11");
    assertThat(optimum(world)).isEqualTo(costs("11"));
  }

  /** From 10.00 on 6.00 off, twice: 12.00, but the goods are 10.00. */
  @Test
  void discounts_are_never_more_than_the_goods() {
    Pack one = pack(MOUSE, 1, "10.00");
    SmallSupplier source =
        SmallSupplier.selling(one)
            .discounts(
                discount("d", OrderTerms.Subtotal.GOODS, amount(10, 6)),
                discount("e", OrderTerms.Subtotal.GOODS, amount(10, 6)));
    SmallWorld world = new SmallWorld(1, source).need(1, 1);
    ByHand plan = new ByHand(world.world()).taking(Set.of("d", "e"), 1, packs(one, 1));
    allowed(plan.eat("day 1", "O1"), "0");
    assertThat(optimum(world)).isEqualTo(costs("0"));
  }
}
