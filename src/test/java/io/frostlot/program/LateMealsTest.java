package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.pack;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.forecast.Option;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Policy;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Pack;
import io.frostlot.units.Grams;
import io.frostlot.units.Money;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Three meals, best on day 2, possible from day 1 to day 5; a shop sells mice at 2.00 every day, a
 * show at 1.00 on day 4.
 */
class LateMealsTest {
  private static final Pack AT_THE_SHOW = pack(MOUSE, 1, "1.00");

  private static SmallWorld world(String perDayLate) {
    Delivery dayFour =
        new Delivery.Show(new Delivery.Lead(0, false, 0, List.of()), List.of(day(4)));
    Meal.Days days = new Meal.Days(day(1), day(2), day(5));
    Grams grams = MOUSE.grams().mean();
    return new SmallWorld(
            5,
            SmallSupplier.selling(SINGLE),
            SmallSupplier.named("show", AT_THE_SHOW).delivery(dayFour))
        .charges(new Policy.Charges(Money.ZERO, Money.ZERO, Money.ZERO, Money.of(perDayLate)))
        .need(new Need("guests", "mouse", grams, grams, 3, days));
  }

  private static Feeding three(int day) {
    return new Feeding(
        "guests", day(day), new Option(MOUSE, 1), 3, List.of(new Feeding.Draw("O1", 3)));
  }

  /** Three meals at 0.25 for each day after day 2, and 6.00 for the mice. */
  @ParameterizedTest(name = "eaten on day {0}: {1}")
  @CsvSource({"1, 6", "2, 6", "3, 6.75", "4, 7.50", "5, 8.25"})
  void a_late_meal_is_charged_by_the_day(int day, String money) {
    ByHand plan = new ByHand(world("0.25").world()).order(1, packs(SINGLE, 3)).eat(three(day));
    allowed(plan, money);
  }

  /** The show saves 1.00 a meal and makes it two days late: worth it below 0.50 a day. */
  @Test
  void a_meal_is_late_where_that_costs_less() {
    assertThat(optimum(world("0.49"))).isEqualTo(costs("5.94"));
    assertThat(optimum(world("0.51"))).isEqualTo(costs("6"));
  }
}
