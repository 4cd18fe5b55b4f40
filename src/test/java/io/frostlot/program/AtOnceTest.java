package io.frostlot.program;

import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.SINGLE;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.Exhaustive;
import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.DateBasis;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Single mice at 2.00. */
class AtOnceTest {
  private static final int WORLDS = Math.max(60, Integer.getInteger("frostlot.worlds", 60));

  private static SmallWorld twoOnDayOneThreeOnDayFive(SmallSupplier supplier) {
    return new SmallWorld(7, supplier).need(1, 2).need(5, 3);
  }

  private static Answer.Judged plan(World world) {
    return new AtOnce(world, OptionalInt.of(1)).plan(world.slots()).orElseThrow();
  }

  /** Five mice are eaten, and no more are bought. */
  @Test
  void what_is_needed_is_bought() {
    SmallWorld world = twoOnDayOneThreeOnDayFive(SmallSupplier.selling(SINGLE));
    assertThat(plan(world.world()).standing()).isEqualTo(costs("10")).isEqualTo(optimum(world));
  }

  /** At 1.00 each, at most three an order: all five, bought on two days. */
  @Test
  void promotions_are_taken() {
    Sale sale =
        new Sale(
            "s",
            Period.ALWAYS,
            DateBasis.ORDER,
            Set.of(),
            new Sale.PriceOf(Money.of(1)),
            new Sale.Limits(3, Pack.UNLIMITED),
            true);
    World world = twoOnDayOneThreeOnDayFive(SmallSupplier.selling(SINGLE).sales(sale)).world();
    assertThat(plan(world).standing()).isEqualTo(costs("5"));
  }

  /** A bag of a hundred is cheaper by the piece, but no box takes more than ten pieces. */
  @Test
  void a_bag_that_fits_into_no_box_is_not_bought() {
    Boxing.Limits ten = new Boxing.Limits(Grams.UNLIMITED, Litres.UNLIMITED, 10);
    SmallSupplier supplier =
        SmallSupplier.selling(SINGLE, SmallWorld.pack(SINGLE.parts().get(0).item(), 100, "3"))
            .boxing(new Boxing(Boxing.Way.WHOLE_PACKS, ten, 9));
    World world = twoOnDayOneThreeOnDayFive(supplier).world();
    assertThat(plan(world).standing()).isEqualTo(costs("10"));
  }

  /** Six litres of mice in hand, room for four: two must go, and four are enough. */
  @Test
  void what_has_no_room_on_the_first_day_is_thrown_away() {
    World world =
        twoOnDayOneThreeOnDayFive(SmallSupplier.selling(SINGLE))
            .freezers(SmallWorld.freezer("A", "4", Freezer.Life.of(100)))
            .stock("lot", 6, 50)
            .world();
    Answer.Judged plan = plan(world);
    assertThat(plan.plan().discards()).extracting(Discard::pieces).containsExactly(2);
    assertThat(plan.standing()).isEqualTo(costs("2"));
  }

  /** Three meals on a day, room for two pieces and the one that is always kept free. */
  @Test
  void who_finds_no_room_is_left_without() {
    World world =
        new SmallWorld(3, SmallSupplier.selling(SINGLE))
            .freezers(SmallWorld.freezer("A", "3", Freezer.Life.of(100)))
            .need(2, 3)
            .world();
    assertThat(plan(world).standing()).isEqualTo(Faces.unmet(1, "4"));
  }

  @Test
  void a_search_over_sets_of_deliveries_finds_the_best() {
    SmallWorld world = twoOnDayOneThreeOnDayFive(SmallSupplier.selling(SINGLE));
    Best best = new Best(0.005);
    new ManyKinds(world.world(), best, () -> true, OptionalInt.of(30), nanos -> {}).run();
    assertThat(best.plan().map(Answer.Judged::standing)).contains(optimum(world));
  }

  /** Whatever rules there are: what is found holds, and nothing is better than the best of all. */
  @Test
  void no_plan_is_better_than_trying_everything() {
    int found = 0;
    for (long seed = 0; seed < WORLDS; seed++) {
      World world = TinyWorlds.of(seed);
      if (!world.joint().equals(Joint.ALONE)) {
        continue;
      }
      Optional<Standing> least = Exhaustive.best(world).map(Exhaustive.Found::standing);
      Optional<Answer.Judged> plan = new AtOnce(world, OptionalInt.of(1)).plan(world.slots());
      if (plan.isPresent()) {
        found++;
        assertThat(least).as(world.scenario().name()).isPresent();
        assertThat(plan.get().standing())
            .as(world.scenario().name())
            .isGreaterThanOrEqualTo(least.get());
      }
    }
    assertThat(found).as("worlds with a plan").isGreaterThan(WORLDS / 4);
  }
}
