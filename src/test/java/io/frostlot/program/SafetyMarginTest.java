package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.pack;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Policy;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.Standing;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Five mice at 1.00 are eaten on day 3 and five on day 7; deliveries come on days 2 and 6, and prey
 * keeps five days.
 */
class SafetyMarginTest {
  private static final Pack ONE = pack(MOUSE, 1, "1.00");

  private static SmallWorld world(String percent, Pack... packs) {
    Delivery twice =
        new Delivery.Show(new Delivery.Lead(0, false, 0, List.of()), List.of(day(2), day(6)));
    return new SmallWorld(8, SmallSupplier.selling(packs).delivery(twice))
        .freezers(SmallWorld.freezer("A", "100", Freezer.Life.of(5)))
        .safety(new Policy.Safety(0, Percent.of(percent)))
        .need(3, 5)
        .need(7, 5);
  }

  private static Standing after(String percent, int boughtOnDayTwo) {
    ByHand plan = new ByHand(world(percent, ONE).world());
    plan.order(2, packs(ONE, boughtOnDayTwo)).order(6, packs(ONE, 5));
    return allowed(plan.eat("day 3", "O1").eat("day 7", "O2")).standing();
  }

  /** Of five, 20 % are one piece, 21 % are 1.05 and so two, 100 % are five. */
  @ParameterizedTest(name = "{0} %: {1}")
  @CsvSource({"0, 0", "1, 1", "20, 1", "21, 2", "40, 2", "100, 5", "120, 6"})
  void a_share_of_what_was_eaten_should_be_left_when_the_next_comes(String percent, int wanted) {
    assertThat(after(percent, 5 + wanted)).isEqualTo(new Standing(0, 0, 0, Money.of(10 + wanted)));
    if (wanted > 0) {
      assertThat(after(percent, 4 + wanted)).isEqualTo(new Standing(0, 0, 1, Money.of(9 + wanted)));
    }
    assertThat(optimum(world(percent, ONE)))
        .isEqualTo(new Standing(0, 0, 0, Money.of(10 + wanted)));
  }

  /** Of five mice of 25 g 40 % are two, and none are there the night before day 6. */
  @Test
  void what_is_short_is_said_by_size_and_delivery() {
    ByHand plan = new ByHand(world("40", ONE).world());
    plan.order(2, packs(ONE, 5)).order(6, packs(ONE, 5));
    assertThat(allowed(plan.eat("day 3", "O1").eat("day 7", "O2")).shortfalls())
        .containsExactly(
            Shortfall.counted(
                "safety-margin",
                Shortfall.Unit.PIECES,
                List.of(new Shortfall.Part("mouse of 16 to 32 g", SmallWorld.days(6, 6), 2))));
  }

  /** With room for five pieces the margin of one gives way, and both meals are met. */
  @Test
  void a_margin_gives_way_before_a_meal_does() {
    SmallWorld tight = world("20", ONE).freezers(SmallWorld.freezer("A", "5", Freezer.Life.of(5)));
    assertThat(optimum(tight)).isEqualTo(new Standing(0, 0, 1, Money.of(10)));
  }

  /** 16 g and 25 g lie between the same powers of two; 15 g and 32 g do not. */
  @ParameterizedTest(name = "a {0} of {1} g left: {2} short")
  @CsvSource({"mouse, 16, 0", "mouse, 31, 0", "mouse, 15, 1", "mouse, 32, 1", "rat, 25, 1"})
  void prey_of_the_same_band_stands_in(String kind, int grams, int shortfall) {
    Item other = prey("Other", kind, grams);
    Pack another = pack(other, 1, "1.00");
    ByHand plan = new ByHand(world("20", ONE, another).world());
    plan.order(2, packs(ONE, 5), packs(another, 1)).order(6, packs(ONE, 5));
    assertThat(allowed(plan.eat("day 3", "O1").eat("day 7", "O3")).standing())
        .isEqualTo(new Standing(0, 0, shortfall, Money.of(11)));
  }
}
