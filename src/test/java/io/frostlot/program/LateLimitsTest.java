package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.best;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.freezer;
import static io.frostlot.program.SmallWorld.pack;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.Option;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Lateness;
import io.frostlot.plan.Fed;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Standing;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Meals are best on days 2, 5 and 8 and may be two days late; a shop sells mice at 2.00 every day,
 * a show at 1.00 on days 4, 5 and 9, and they keep for one day. The second meal costs 1.00; waiting
 * for the show saves 1.00 on the first and makes it two days late, and on the last, one day late.
 */
class LateLimitsTest {
  private static final Pack AT_THE_SHOW = pack(MOUSE, 1, "1.00");

  private static SmallWorld world(List<Lateness> limits, String... animals) {
    Delivery shows =
        new Delivery.Show(
            new Delivery.Lead(0, false, 0, List.of()), List.of(day(4), day(5), day(9)));
    SmallWorld world =
        new SmallWorld(
                10,
                SmallSupplier.selling(SINGLE),
                SmallSupplier.named("show", AT_THE_SHOW).delivery(shows))
            .freezers(freezer("A", "1000", Freezer.Life.of(1)));
    for (String name : animals) {
      world.animal(Eaters.everyThirdDay(name, new Animal.Leeway(0, 2, limits)));
    }
    return world;
  }

  private static List<Lateness> atMost(Lateness.Counted counted, int most) {
    return List.of(new Lateness(counted, most));
  }

  private static Standing standing(int shortfall, String money) {
    return new Standing(0, 0, shortfall, Money.of(money));
  }

  /** Without any late meal 5.00, 1.00 less for each that is late. */
  @ParameterizedTest(name = "at most {1} {0}: {2}")
  @CsvSource({
    "MEALS, 2, 3",
    "MEALS, 1, 4",
    "MEALS, 0, 5",
    "DAYS, 3, 3",
    "DAYS, 2, 4",
    "DAYS, 1, 4",
    "DAYS, 0, 5"
  })
  void so_many_meals_are_late_and_no_more(Lateness.Counted counted, int most, String money) {
    assertThat(optimum(world(atMost(counted, most), "Ash"))).isEqualTo(standing(0, money));
  }

  /** Of two animals fed alike with one late meal each, not one with two and the other with none. */
  @Test
  void each_animal_has_its_own_limit() {
    SmallWorld two = world(atMost(Lateness.Counted.MEALS, 1), "Ash", "Bay");
    assertThat(optimum(two)).isEqualTo(standing(0, "8"));
    assertThat(Fed.of(two.world(), best(two.world()).plan()))
        .extracting(fed -> fed.meals().late())
        .containsExactly(1L, 1L);
  }

  /** Day 2 is before the only show, on day 4, so that two days late is all there is. */
  @Test
  void gives_way_before_a_meal_does() {
    Delivery show = new Delivery.Show(new Delivery.Lead(0, false, 0, List.of()), List.of(day(4)));
    SmallWorld world =
        new SmallWorld(10, SmallSupplier.named("show", AT_THE_SHOW).delivery(show))
            .animal(
                Eaters.everyThirdDay(
                    "Ash", new Animal.Leeway(0, 2, atMost(Lateness.Counted.DAYS, 0))));
    assertThat(optimum(world)).isEqualTo(standing(2, "3"));
  }

  /** One day late twice, one more than asked for. */
  @Test
  void a_plan_beyond_the_limit_is_said_to_fall_short() {
    SmallWorld world = world(atMost(Lateness.Counted.DAYS, 1), "Ash");
    ByHand plan =
        new ByHand(world.world())
            .order(3, packs(SINGLE, 1))
            .order(6, packs(SINGLE, 1))
            .order(8, packs(SINGLE, 1))
            .eat(fed("Ash " + day(2), 3, "O1"))
            .eat(fed("Ash " + day(5), 6, "O2"))
            .eat(fed("Ash " + day(8), 8, "O3"));
    assertThat(allowed(plan).standing()).isEqualTo(standing(1, "6"));
  }

  private static Feeding fed(String meal, int day, String lot) {
    return new Feeding(meal, day(day), new Option(MOUSE, 1), 1, List.of(new Feeding.Draw(lot, 1)));
  }
}
