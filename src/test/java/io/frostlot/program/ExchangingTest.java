package io.frostlot.program;

import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.pack;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.Option;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * Two animals that should get 40 g at each of four meals, and four pieces of 30 g and four of 50 g
 * in hand: each gets 160 g, all that it should, when it gets two of each. With all the light pieces
 * one gets 120 g, 22 percent of 160 below 97 percent, the other 200 g, 20 percent above 105.
 */
final class ExchangingTest {
  private static final Item LIGHT = prey("Light", "mouse", 30);
  private static final Item HEAVY = prey("Heavy", "mouse", 50);

  private static World world() {
    World world =
        new SmallWorld(8, SmallSupplier.selling(pack(LIGHT, 1, "9.00"), pack(HEAVY, 1, "9.00")))
            .animal(Eaters.onEvenDays("Ash", Plate.ANY))
            .animal(Eaters.onEvenDays("Birch", Plate.ANY))
            .stock(four("light", LIGHT))
            .stock(four("heavy", HEAVY))
            .world();
    Policy.Adequacy asked = new Policy.Adequacy(true, Percent.of("97"), Percent.of("105"));
    return World.of(world.scenario().withPolicy(world.scenario().policy().withAdequacy(asked)));
  }

  private static StockLot four(String id, Item item) {
    return new StockLot(id, item, 4, "A", day(-30), day(8));
  }

  private static Feeding feeding(Feeding some, String lot, Item item) {
    Option option = new Option(item, 1);
    return new Feeding(some.mealId(), some.day(), option, 1, List.of(new Feeding.Draw(lot, 1)));
  }

  /** All that is light for the one, all that is heavy for the other. */
  private static Plan uneven(World world) {
    Plan any = new AtOnce(world, OptionalInt.of(1)).plan(List.of()).orElseThrow().plan();
    assertThat(any.lots()).extracting(Lot::id).containsExactlyInAnyOrder("light", "heavy");
    List<Feeding> feedings =
        any.feedings().stream()
            .map(
                it ->
                    it.mealId().startsWith("Ash")
                        ? feeding(it, "light", LIGHT)
                        : feeding(it, "heavy", HEAVY))
            .toList();
    return new Plan(any.orders(), any.lots(), feedings, any.discards());
  }

  @Test
  void pieces_change_places_until_each_animal_gets_what_it_should() {
    World world = world();
    Answer.Judged begun = Engine.judge(world, uneven(world)).orElseThrow();
    assertThat(begun.standing().shortfall()).isPositive();
    TrialWorld trials = new TrialWorld(world);
    TrialPlan plan = TrialPlan.of(trials, begun.plan()).orElseThrow();
    new Repacking(trials, plan, new Cooling(0, 1, () -> 0), 1).run(() -> false, () -> {});
    assertThat(Engine.judge(world, plan.plan()).orElseThrow().standing())
        .isEqualTo(new Standing(0, 0, 0, Money.ZERO));
  }
}
