package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Policy;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.Standing;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mice at 2.00 are eaten two by two on days 30 and 32; day 32 is the first of February. */
class WithinBudgetTest {
  private static final Delivery MARKET =
      new Delivery.Show(
          new Delivery.Lead(0, false, 0, List.of()), List.of(day(29), day(30), day(31), day(32)));

  /**
   * On the market of the last four days; the trip costs 3.00, on which there is 10 % of tax as on
   * the mice.
   */
  private static SmallSupplier source() {
    return SmallSupplier.selling(SINGLE)
        .delivery(MARKET)
        .tax(new OrderTerms.Tax(Percent.of("10"), true))
        .shipping(
            new Shipping(
                Shipping.Rate.FREE,
                Shipping.Packing.FREE,
                List.of(),
                List.of(new Shipping.OrderCharge(SmallWorld.days(1, 99), Money.of(3)))));
  }

  private static SmallWorld budget(String perOrder, String perMonth, String spent) {
    Policy.Budget budget =
        new Policy.Budget(Money.of(perOrder), Money.of(perMonth), Money.of(spent));
    return new SmallWorld(32, source())
        .ordering(Policy.Ordering.FREE.withBudget(budget))
        .need(30, 2)
        .need(32, 2);
  }

  /** Four mice at once: (8 + 3) x 1.1 = 12.10. */
  private static ByHand atOnce(SmallWorld world) {
    return new ByHand(world.world())
        .order(30, packs(SINGLE, 4))
        .eat("day 30", "O1")
        .eat("day 32", "O1");
  }

  /** Two mice a time: (4 + 3) x 1.1 = 7.70. */
  private static ByHand apart(SmallWorld world) {
    return new ByHand(world.world())
        .order(30, packs(SINGLE, 2))
        .order(32, packs(SINGLE, 2))
        .eat("day 30", "O1")
        .eat("day 32", "O2");
  }

  /** Above 12.00 by 0.10 is 0.83 %, which is 1; above 11.00 by 1.10 is 10 %; in between 10.1 %. */
  @ParameterizedTest(name = "{0} an order: {1} %")
  @CsvSource({"0, 0", "12.10, 0", "12.00, 1", "11.00, 10", "10.99, 11", "6.05, 100"})
  void an_order_above_its_budget_falls_short_by_percent(String perOrder, int percent) {
    assertThat(allowed(atOnce(budget(perOrder, "0", "0"))).standing())
        .isEqualTo(new Standing(0, 0, percent, Money.of("12.10")));
  }

  /** January bears all of it, or one order each with February. */
  @ParameterizedTest(name = "{0} a month, {1} spent: {2} % at once, {3} % apart")
  @CsvSource({
    "12.10, 0, 0, 0",
    "11.00, 0, 10, 0",
    "7.70, 0, 58, 0",
    "7.00, 0, 73, 20",
    "11.00, 3.30, 40, 0",
    "10.00, 20.00, 221, 177"
  })
  void the_orders_of_a_month_share_a_budget(String perMonth, String spent, int atOnce, int apart) {
    SmallWorld world = budget("0", perMonth, spent);
    assertThat(allowed(atOnce(world)).standing().shortfall()).isEqualTo(atOnce);
    assertThat(allowed(apart(world)).standing().shortfall()).isEqualTo(apart);
  }

  /** January's order of 7.70 is 54 % above 5.00, February's too; with 3.30 spent it is 120 %. */
  @Test
  void what_is_above_is_said_by_order_and_month() {
    assertThat(allowed(apart(budget("5", "5", "3.30"))).shortfalls())
        .containsExactly(
            Shortfall.counted(
                "budget",
                Shortfall.Unit.PERCENT,
                List.of(
                    new Shortfall.Part(SmallWorld.SOURCE, SmallWorld.days(30, 30), 54),
                    new Shortfall.Part(SmallWorld.SOURCE, SmallWorld.days(32, 32), 54),
                    new Shortfall.Part("", SmallWorld.days(1, 31), 120),
                    new Shortfall.Part("", SmallWorld.days(32, 59), 54))));
  }

  /** One order costs 12.10, two cost 15.40: a budget below 12.10 is worth 3.30. */
  @ParameterizedTest(name = "{0} an order, {1} a month: {2} short, {3}")
  @CsvSource({"0, 0, 0, 12.10", "12.10, 0, 0, 12.10", "12, 0, 0, 15.40", "0, 12, 0, 15.40"})
  void a_budget_comes_before_money(String perOrder, String perMonth, int shortfall, String money) {
    assertThat(optimum(budget(perOrder, perMonth, "0")))
        .isEqualTo(new Standing(0, 0, shortfall, Money.of(money)));
  }

  /** Four orders of one mouse cost 5.50 each, which is 10 % above 5.00: 40 for all four. */
  @Test
  void a_budget_gives_way_before_a_meal_does() {
    assertThat(optimum(budget("5", "0", "0"))).isEqualTo(new Standing(0, 0, 40, Money.of("22.00")));
  }

  /** What is spent above the month's budget falls short whatever is ordered. */
  @Test
  void what_is_spent_already_counts_in_both_faces() {
    SmallWorld nobody =
        new SmallWorld(2, source())
            .ordering(
                Policy.Ordering.FREE.withBudget(
                    new Policy.Budget(Money.ZERO, Money.of(10), Money.of("12.50"))));
    assertThat(optimum(nobody)).isEqualTo(new Standing(0, 0, 25, Money.ZERO));
  }
}
