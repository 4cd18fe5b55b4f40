package io.frostlot.program;

import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.frostlot.bench.RoomDraw;
import io.frostlot.bench.RoomSize;
import io.frostlot.oracle.Exhaustive;
import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.DueSoon;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Replay;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;

/** What is found is judged by the rules, and compared with trying everything. */
final class RepackingTest {
  private static final int WORLDS = Integer.getInteger("frostlot.worlds", 30);
  private static final int STEPS = 150;
  private static final double CENT = 0.005;

  private static Optional<Answer.Judged> begin(World world) {
    return new AtOnce(world, OptionalInt.of(1)).plan(world.slots());
  }

  /** The best plan found from one on, after each has been compared with what the rules say. */
  private static Answer.Judged search(World world, Answer.Judged from, int steps) {
    Answer.Judged[] best = {from};
    run(
        new TrialWorld(world),
        from,
        steps,
        (amounts, found) -> {
          if (found.books().breaches().isEmpty()) {
            assertSame(world, amounts, found);
            assertThat(Replay.of(world, found.plan()).breaches()).isEmpty();
            best[0] = found.standing().compareTo(best[0].standing()) < 0 ? found : best[0];
          }
        });
    return best[0];
  }

  /**
   * Searches from a plan on.
   *
   * @param better told what each better plan comes to in the search, and by the rules
   */
  static void run(
      TrialWorld trials, Answer.Judged from, int steps, BiConsumer<Amounts, Answer.Judged> better) {
    TrialPlan plan = TrialPlan.of(trials, from.plan()).orElseThrow();
    Repacking search = new Repacking(trials, plan, new Cooling(trials.warmth(), 4000, () -> 0), 7);
    search.run(
        () -> search.steps() < steps,
        () -> better.accept(plan.trial().amounts(), Rules.judge(trials.world(), plan.plan())));
  }

  private static void assertSame(World world, Amounts amounts, Answer.Judged found) {
    String name = world.scenario().name();
    double unmet =
        Amounts.MUST * found.standing().unmetMust() + (double) found.standing().unmetOther();
    assertThat(amounts.unmet()).as(name).isEqualTo(unmet);
    if (isAllKnown(world)) {
      assertThat(Math.ceil(amounts.shortfall() - CENT))
          .as(name + " shortfall")
          .isEqualTo((double) found.standing().shortfall());
      assertThat(amounts.money())
          .as(name + " money")
          .isCloseTo(found.standing().money().toDouble(), within(CENT));
    }
  }

  /** Are there none of the rules that only the finished plan is asked? */
  private static boolean isAllKnown(World world) {
    Policy policy = world.scenario().policy();
    return world.dueSoon().equals(DueSoon.NONE)
        && policy.safety().secondFreezer().days() == 0
        && policy.charges().pastBest().isZero();
  }

  @Test
  void a_trial_comes_to_what_the_rules_say_and_is_never_better_than_the_best() {
    int looked = 0;
    int searched = 0;
    for (long seed = 1; looked < WORLDS; seed++) {
      World world = TinyWorlds.of(seed);
      Optional<Answer.Judged> begun =
          TrialWorld.suits(world) && AtOnce.suits(world) ? begin(world) : Optional.empty();
      if (begun.isEmpty() || TrialPlan.of(new TrialWorld(world), begun.get().plan()).isEmpty()) {
        continue;
      }
      looked++;
      Answer.Judged found = search(world, begun.get(), STEPS);
      searched += found.standing().compareTo(begun.get().standing()) < 0 ? 1 : 0;
      assertThat(found.standing())
          .as("world " + seed)
          .isGreaterThanOrEqualTo(Exhaustive.best(world).orElseThrow().standing());
    }
    assertThat(searched).as("plans that became better").isGreaterThan(0);
  }

  @Test
  void a_drawn_room_with_margin_and_cover_is_weighed_as_the_rules_do() {
    World world = World.of(RoomDraw.of(RoomSize.XS, 3).scenario());
    Answer.Judged begun = begin(world).orElseThrow();
    assertThat(search(world, begun, 2 * STEPS).standing()).isLessThan(begun.standing());
  }

  /** Five mice at 2.00 each are 10.00, a bag of five is 6.00. */
  @Test
  void single_mice_are_given_back_for_a_bag() {
    Pack bag = SmallWorld.pack(MOUSE, 5, "6.00");
    SmallWorld singles = new SmallWorld(7, SmallSupplier.selling(SINGLE)).need(1, 2).need(5, 3);
    SmallWorld both = new SmallWorld(7, SmallSupplier.selling(SINGLE, bag)).need(1, 2).need(5, 3);
    Plan bought = begin(singles.world()).orElseThrow().plan();
    Answer.Judged begun = Rules.judge(both.world(), bought);
    assertThat(begun.standing()).isEqualTo(costs("10"));
    assertThat(search(both.world(), begun, 500).standing())
        .isEqualTo(costs("6"))
        .isEqualTo(optimum(both));
  }

  /** Two orders at 1.00 of effort each; one of all five costs 1.00 less. */
  @Test
  void two_orders_become_one() {
    Policy.Charges effort = Policy.Charges.NONE.withEffort(Money.of(1), Money.ZERO);
    SmallSupplier shop = SmallSupplier.selling(SINGLE);
    SmallWorld world = new SmallWorld(7, shop).need(1, 2).need(5, 3).charges(effort);
    World all = world.world();
    World two =
        new SmallWorld(7, shop)
            .need(1, 2)
            .need(5, 3)
            .freezers(SmallWorld.freezer("A", "1000", io.frostlot.storage.Freezer.Life.of(4)))
            .world();
    Plan bought = begin(two).orElseThrow().plan();
    Answer.Judged begun = Rules.judge(all, search(two, Rules.judge(two, bought), 1).plan());
    assertThat(begun.plan().orders()).hasSizeGreaterThan(1);
    assertThat(search(all, begun, 500).standing()).isEqualTo(costs("11")).isEqualTo(optimum(world));
  }
}
