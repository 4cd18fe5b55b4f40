package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
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

/** Single mice at 2.00. */
class CombiningTest {
  private static final String RULE = "combining";

  private static Sale sale(String id, String percent, Set<String> items, boolean combinable) {
    return new Sale(
        id,
        Period.ALWAYS,
        DateBasis.ORDER,
        items,
        new Sale.PercentOff(Percent.of(percent)),
        Sale.Limits.NONE,
        combinable);
  }

  private static OrderTerms.Discount quarter(Period when, boolean combinable) {
    OrderTerms.Tier tier = new OrderTerms.Tier(Money.of(7), Percent.of("25"), Money.ZERO);
    return new OrderTerms.Discount(
        "d", when, DateBasis.ORDER, OrderTerms.Subtotal.GOODS, List.of(tier), combinable);
  }

  private static SmallWorld fourMice(boolean sale, boolean discount) {
    SmallSupplier source =
        SmallSupplier.selling(SINGLE)
            .sales(sale("s", "10", Set.of(), sale))
            .discounts(quarter(Period.ALWAYS, discount));
    return new SmallWorld(1, source).need(1, 4);
  }

  private static ByHand both(SmallWorld world) {
    return new ByHand(world.world())
        .taking(Set.of("s", "d"), 1, packs(SINGLE, 4, Map.of("s", 4)))
        .eat("day 1", "O1");
  }

  /** 8.00 less 10 % are 7.20, less a quarter 5.40. */
  @Test
  void promotions_that_may_be_combined_are() {
    allowed(both(fourMice(true, true)), "5.40");
    assertThat(optimum(fourMice(true, true))).isEqualTo(costs("5.40"));
  }

  /** One of the two is enough to forbid it: 8.00 less a quarter, better than 7.20. */
  @ParameterizedTest(name = "sale {0}, discount {1}")
  @CsvSource({"true, false", "false, true"})
  void one_that_may_not_be_combined_stands_alone(boolean sale, boolean discount) {
    SmallWorld world = fourMice(sale, discount);
    refused(both(world), RULE);
    ByHand alone = new ByHand(world.world()).taking(Set.of("d"), 1, packs(SINGLE, 4));
    allowed(alone.eat("day 1", "O1"), "6");
    assertThat(optimum(world)).isEqualTo(costs("6"));
  }

  /** Half off four mice saves 4.00, half off two rats at 5.00 saves 5.00: 8.00 + 5.00. */
  @Test
  void the_sale_that_saves_more_on_the_order_is_taken() {
    Item rat = prey("Rat", "rat", 80);
    Pack rats = pack(rat, 1, "5.00");
    SmallSupplier source =
        SmallSupplier.selling(SINGLE, rats)
            .sales(sale("s", "50", Set.of("Mouse"), false), sale("t", "50", Set.of("Rat"), false));
    SmallWorld world = new SmallWorld(1, source).need(1, 4).need(rat, 1, 2);
    refused(
        new ByHand(world.world())
            .order(1, packs(SINGLE, 4, Map.of("s", 4)), packs(rats, 2, Map.of("t", 2))),
        RULE);
    assertThat(optimum(world)).isEqualTo(costs("13"));
  }

  /** On day 1 only, and prey keeps for both days: four mice on day 1 are 6.00. */
  @Test
  void a_promotion_is_taken_while_it_holds() {
    SmallSupplier source =
        SmallSupplier.selling(SINGLE).discounts(quarter(SmallWorld.days(1, 1), true));
    SmallWorld world = new SmallWorld(2, source).need(2, 4);
    ByHand inTime = new ByHand(world.world()).taking(Set.of("d"), 1, packs(SINGLE, 4));
    allowed(inTime.eat("day 2", "O1"), "6");
    refused(new ByHand(world.world()).taking(Set.of("d"), 2, packs(SINGLE, 4)), RULE);
    refused(new ByHand(world.world()).taking(Set.of("other"), 1, packs(SINGLE, 4)), RULE);
    assertThat(optimum(world)).isEqualTo(costs("6"));
  }
}
