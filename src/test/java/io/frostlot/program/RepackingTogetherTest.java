package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.frostlot.bench.GroupDraw;
import io.frostlot.bench.RoomSize;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Cutting;
import io.frostlot.plan.Group;
import io.frostlot.plan.JointWorld;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Replay;
import io.frostlot.plan.Standing;
import io.frostlot.plan.Waiting;
import io.frostlot.plan.World;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The local search on worlds that several keepers share, held to the rules and to plans by hand.
 */
final class RepackingTogetherTest {
  private static final int GROUPS = Integer.getInteger("frostlot.groups", 3);
  private static final int STEPS = 400;
  private static final double CENT = 0.005;

  /** Whatever it finds can be followed, and costs what the rules say. */
  private static Standing search(World world, Answer.Judged from, int steps) {
    Answer.Judged[] best = {from};
    RepackingTest.run(
        new TrialWorld(world).with(from.plan()),
        from,
        steps,
        (amounts, found) -> {
          assertThat(found.books().breaches()).isEmpty();
          assertThat(Replay.of(world, found.plan()).breaches()).isEmpty();
          assertSame(amounts, found.standing());
          best[0] = found;
        });
    return best[0].standing();
  }

  private static void assertSame(Amounts amounts, Standing found) {
    double unmet = Amounts.MUST * found.unmetMust() + (double) found.unmetOther();
    assertThat(amounts.unmet()).isEqualTo(unmet);
    assertThat(amounts.shortfall()).isCloseTo((double) found.shortfall(), within(CENT));
    assertThat(amounts.money()).isCloseTo(found.money().toDouble(), within(CENT));
  }

  /** What members would order alone, put together as far as that can be followed. */
  @Test
  void plans_of_drawn_groups_can_be_followed_and_become_cheaper() {
    for (int second = 0; second < 2; second++) {
      int looked = 0;
      for (long seed = 1L + second; looked < GROUPS; seed += 2) {
        looked += isCheaper(GroupDraw.of(3, RoomSize.XS, seed).group()) ? 1 : 0;
      }
    }
  }

  /** False where what they order alone cannot be followed together. */
  private static boolean isCheaper(Group group) {
    World world = JointWorld.of(group.keepers(), group.agreement()).orElseThrow();
    Map<Keeper, Plan> alone = new LinkedHashMap<>();
    for (Keeper keeper : group.keepers()) {
      World own = World.of(keeper.scenario());
      AtOnce plans = new AtOnce(own, OptionalInt.of(1));
      alone.put(keeper, plans.plan(own.slots()).orElseThrow().plan());
    }
    Answer.Judged begun = Rules.judge(world, PutTogether.of(world, alone).orElseThrow());
    if (!begun.books().breaches().isEmpty()) {
      return false;
    }
    assertThat(search(world, begun, STEPS)).as(group.name()).isLessThan(begun.standing());
    return true;
  }

  private static Answer.Judged nothing(World world) {
    return Rules.judge(world, new Plan(List.of(), List.of(), List.of(), List.of()));
  }

  @Test
  void whole_bags_come_to_what_was_derived_by_hand() {
    JointByHand some = JointByHand.wholeBags();
    assertThat(search(some.world(), nothing(some.world()), STEPS)).isEqualTo(some.best());
  }

  /** The bag is cut in six and four, which is not among the ways that are tried: begun with it. */
  @Test
  void what_others_found_is_gone_on_from_and_nothing_waits_without_room() {
    JointByHand some = JointByHand.waiting();
    Answer.WithPlan best =
        (Answer.WithPlan)
            Engine.solve(some.world(), Limits.ofSeconds(60), Watch.stopping(() -> false));
    assertThat(best.plan().standing()).isEqualTo(some.best());
    assertThat(search(some.world(), best.plan(), STEPS)).isEqualTo(some.best());
    assertThat(search(some.world(), nothing(some.world()), STEPS)).isGreaterThan(some.best());
  }

  /** A bag of ten at 10.00 is cut into portions of at least so many, or not at all. */
  @Test
  void a_bag_is_cut_where_portions_are_large_enough() {
    for (int least = 1; least <= 10; least++) {
      Cutting cutting = new Cutting(Map.of(JointByHand.bag().id(), least), false);
      World world = JointByHand.world(3, cutting, Set.of(), Waiting.NONE);
      String money = least <= 5 ? "10" : "20";
      assertThat(search(world, nothing(world), STEPS)).isEqualTo(Faces.costs(money));
    }
  }
}
