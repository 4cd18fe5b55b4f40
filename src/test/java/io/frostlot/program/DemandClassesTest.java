package io.frostlot.program;

import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.day;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.plan.Alike;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.List;
import org.junit.jupiter.api.Test;

class DemandClassesTest {
  /** Mice in hand on day 1, nothing comes later: all ten days are one segment. */
  private static SmallWorld inHand() {
    return new SmallWorld(10).stock("lot", 20, 50);
  }

  private static Need mice(String label, int day, int latest, int pieces) {
    Meal.Days days = new Meal.Days(day(day), day(day), day(latest));
    return new Need(label, MOUSE.kind(), MOUSE.grams().mean(), MOUSE.grams().mean(), pieces, days);
  }

  private static List<Integer> counts(World world, Grain grain) {
    return Rules.program(world, grain).decisions().served().stream()
        .map(served -> served.demandClass().count())
        .toList();
  }

  @Test
  void meals_of_the_same_days_and_options_are_alike() {
    World world =
        inHand()
            .need(mice("one", 3, 4, 2))
            .need(mice("other", 3, 4, 3))
            .need(mice("later", 3, 5, 1))
            .world();
    assertThat(world.meals().alike().stream().map(Alike::count)).containsExactlyInAnyOrder(5, 1);
    assertThat(world.meals().all()).hasSize(3);
  }

  /** Where a night is charged, three pieces eaten on day 5 cost two nights more than on day 3. */
  @Test
  void nights_taken_together_make_meals_of_one_segment_one_class() {
    SmallWorld world = inHand().need(mice("one", 3, 3, 2)).need(mice("other", 5, 5, 3));
    assertThat(counts(world.world(), Grain.DAYS)).containsExactly(5);
    Policy.Charges charged =
        new Policy.Charges(Money.of("0.50"), Money.ZERO, Money.ZERO, Money.ZERO);
    world.charges(charged);
    assertThat(counts(world.world(), Grain.DAYS)).containsExactly(2, 3);
    assertThat(counts(world.world(), Grain.DAYS.withNightsTogether())).containsExactly(5);
  }

  @Test
  void a_room_with_few_kinds_of_meals_tells_nights_apart() {
    assertThat(Grain.DAYS.fit(inHand().need(3, 1).world())).isEqualTo(Grain.DAYS);
  }
}
