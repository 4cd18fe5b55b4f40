package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.best;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.pack;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.keeping.Plate;
import io.frostlot.plan.Standing;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A meal every other day, 28 in eight weeks: a rat of 40 g costs 1.00, a mouse of 40 g 2.00, at a
 * shop that is open every day.
 */
class KindSharesTest {
  private static final Item MOUSE = prey("Mouse", "mouse", 40);
  private static final Item RAT = prey("Rat", "rat", 40);
  private static final Pack ONE_MOUSE = pack(MOUSE, 1, "2.00");
  private static final Pack ONE_RAT = pack(RAT, 1, "1.00");

  private static SmallWorld world(int days, String largestShare, Pack... sold) {
    TreeMap<String, Percent> shares = new TreeMap<>();
    shares.put("rat", Percent.of(largestShare));
    return new SmallWorld(days, SmallSupplier.selling(sold))
        .animal(Eaters.onEvenDays("Ash", new Plate(shares, new Plate.Free())));
  }

  private static Standing standing(int shortfall, String money) {
    return new Standing(0, 0, shortfall, Money.of(money));
  }

  /**
   * Four meals on days 2 to 8, of the 28 of eight weeks: 3 of them may be rats at 11 % (3.08), and
   * at 10.7 % only 2 (2.996), which costs 1.00 more.
   */
  @ParameterizedTest(name = "{0} %: {1}")
  @CsvSource({"100, 4", "11, 5", "10.7, 6", "3, 8", "0, 8"})
  void a_share_is_rounded_down_to_meals(String percent, String money) {
    assertThat(optimum(world(8, percent, ONE_MOUSE, ONE_RAT))).isEqualTo(standing(0, money));
  }

  /**
   * In 58 days are 29 meals, in any eight weeks of them 28, of which one may be a rat (5 % are
   * 1.4); with one on day 2 and one on day 58 no eight weeks have both: 27 x 2.00 + 2 x 1.00.
   */
  @Test
  void holds_over_any_eight_weeks() {
    assertThat(best(world(58, "5", ONE_MOUSE, ONE_RAT).world()).standing())
        .isEqualTo(standing(0, "56"));
  }

  /** Where there are only rats, four of them are eaten, three more than the one that should be. */
  @Test
  void gives_way_before_a_meal_does() {
    assertThat(optimum(world(8, "4", ONE_RAT))).isEqualTo(standing(3, "4"));
  }

  @Test
  void a_plan_with_too_many_is_said_to_fall_short() {
    SmallWorld world = world(4, "4", ONE_MOUSE, ONE_RAT);
    ByHand both =
        new ByHand(world.world())
            .order(1, packs(ONE_RAT, 2))
            .eat("Ash " + day(2), "O1")
            .eat("Ash " + day(4), "O1");
    assertThat(allowed(both).standing()).isEqualTo(standing(1, "2"));
    assertThat(best(world.world()).standing()).isEqualTo(standing(0, "3"));
  }
}
