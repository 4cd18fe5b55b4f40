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
import io.frostlot.supply.Shipping;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two mice at 2.00 are eaten on day 4, the last; an order of day 1 or 2 costs 5.00 more. */
class SafetyCoverTest {
  private static SmallSupplier source() {
    return SmallSupplier.selling(SINGLE)
        .shipping(
            new Shipping(
                Shipping.Rate.FREE,
                Shipping.Packing.FREE,
                List.of(),
                List.of(new Shipping.OrderCharge(SmallWorld.days(1, 2), Money.of(5)))));
  }

  private static SmallWorld cover(int days, SmallSupplier source) {
    return new SmallWorld(4, source).safety(new Policy.Safety(days, Percent.ZERO)).need(4, 2);
  }

  /** With two days of cover what came on day 2 may be eaten on day 4, what came on day 3 not. */
  @ParameterizedTest(name = "{0} days of cover, ordered on day {1}: {2} short")
  @CsvSource({
    "0, 4, 0, 4",
    "1, 4, 2, 4",
    "1, 3, 0, 4",
    "2, 3, 2, 4",
    "2, 2, 0, 9",
    "3, 2, 2, 9",
    "3, 1, 0, 9"
  })
  void pieces_should_have_come_so_many_days_before(
      int cover, int orderDay, int shortfall, String money) {
    ByHand plan = new ByHand(cover(cover, source()).world()).order(orderDay, packs(SINGLE, 2));
    assertThat(allowed(plan.eat("day 4", "O1")).standing())
        .isEqualTo(new Standing(0, 0, shortfall, Money.of(money)));
  }

  /** What comes on day 3 should all be there in the nights of days 3 to 5, and two are eaten. */
  @Test
  void what_is_short_is_said_by_item_and_days() {
    SmallWorld world =
        new SmallWorld(9, source()).safety(new Policy.Safety(3, Percent.ZERO)).need(4, 2);
    ByHand plan = new ByHand(world.world()).order(3, packs(SINGLE, 2)).eat("day 4", "O1");
    assertThat(allowed(plan).shortfalls())
        .containsExactly(
            Shortfall.counted(
                "safety-cover",
                Shortfall.Unit.PIECE_DAYS,
                List.of(new Shortfall.Part(SmallWorld.MOUSE.id(), SmallWorld.days(4, 5), 4))));
  }

  /** One day of cover costs nothing more; two cost the 5.00. */
  @ParameterizedTest(name = "{0} days of cover: {1}")
  @CsvSource({"0, 4", "1, 4", "2, 9", "3, 9"})
  void cover_comes_before_money(int cover, String money) {
    assertThat(optimum(cover(cover, source()))).isEqualTo(new Standing(0, 0, 0, Money.of(money)));
  }

  /** The only delivery is on the day of the meal: two pieces are short that night. */
  @Test
  void cover_gives_way_before_a_meal_does() {
    Delivery dayFour =
        new Delivery.Show(new Delivery.Lead(0, false, 0, List.of()), List.of(day(4)));
    assertThat(optimum(cover(2, source().delivery(dayFour))))
        .isEqualTo(new Standing(0, 0, 2, Money.of(4)));
  }

  /** The two in hand are eaten; what comes on day 4 is still there at night. */
  @Test
  void what_was_there_before_is_eaten_first() {
    SmallWorld world = cover(2, source()).stock("S", 2, 9);
    ByHand plan = new ByHand(world.world()).order(4, packs(SINGLE, 1)).eat("day 4", "S");
    assertThat(allowed(plan).standing()).isEqualTo(new Standing(0, 0, 0, Money.of(2)));
  }
}
