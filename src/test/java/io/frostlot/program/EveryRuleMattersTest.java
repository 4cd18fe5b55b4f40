package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.Exhaustive;
import io.frostlot.oracle.Feature;
import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * A rule that is left out of the program must make a difference to what trying everything finds in
 * some tiny world, or nothing would tell that it is there.
 */
class EveryRuleMattersTest {
  private static final int MOST_WORLDS = 150;

  /** Features of worlds in which rules matter that seldom do. */
  private static final Map<String, Set<Feature>> SELDOM =
      Map.of(
          "adequacy", Set.of(Feature.ADEQUACY),
          "moves", Set.of(Feature.SECOND_FREEZER, Feature.MOVES, Feature.STOCK),
          "late-limits", Set.of(Feature.LATE_LIMIT),
          "kind-shares", Set.of(Feature.KIND_SHARES),
          "seldom-changes", Set.of(Feature.SELDOM_CHANGES),
          "second-freezer", Set.of(Feature.FOOD_ELSEWHERE, Feature.SECOND_FREEZER, Feature.NEED),
          "combining", Set.of(Feature.SALE, Feature.DISCOUNT, Feature.SECOND_DISCOUNT),
          "whole-packs", Set.of(Feature.BOXES_WHOLE_PACKS, Feature.NEED));

  /**
   * Rules of joint orders, and a world by hand in which each matters: several keepers would be too
   * much to try everything for.
   */
  private static final Map<String, JointByHand> BY_HAND =
      Map.of("bags-handed-out", JointByHand.wholeBags(), "waiting-room", JointByHand.waiting());

  @Test
  void leaving_any_rule_out_is_noticed() {
    List<String> often =
        new ArrayList<>(Rules.of(TinyWorlds.of(0)).stream().map(Rule::id).toList());
    often.removeAll(SELDOM.keySet());
    often.removeAll(BY_HAND.keySet());
    List<String> open = unnoticed(often, Set.of());
    SELDOM.forEach((rule, features) -> open.addAll(unnoticed(List.of(rule), features)));
    assertThat(open)
        .as("rules that may be left out unnoticed (see package-info of io.frostlot.oracle)")
        .isEmpty();
  }

  @Test
  void leaving_out_a_rule_of_joint_orders_is_noticed() {
    BY_HAND.forEach(
        (left, world) -> {
          Optional<Standing> expected = Optional.of(world.best());
          assertThat(LevelByLevel.comesTo(expected, world.world(), rule -> true))
              .as("with every rule, " + world)
              .isTrue();
          assertThat(LevelByLevel.comesTo(expected, world.world(), rule -> !rule.id().equals(left)))
              .as(left)
              .isFalse();
        });
  }

  /** Of what comes before the program: meals, deliveries and freezers are made ready with it. */
  @Test
  void forgetting_anything_that_meals_and_freezers_are_made_of_is_noticed() {
    Forgetting.ALL.forEach(
        (what, forgetting) ->
            assertThat(LongStream.range(0, MOST_WORLDS).anyMatch(seed -> tells(seed, forgetting)))
                .as(what)
                .isTrue());
  }

  private static boolean tells(long seed, Forgetting forgetting) {
    World world = TinyWorlds.having(seed, forgetting.features());
    Optional<Standing> expected = Exhaustive.best(world).map(Exhaustive.Found::standing);
    assertThat(LevelByLevel.comesTo(expected, world, rule -> true))
        .as("with everything, %s", world.scenario().name())
        .isTrue();
    return !LevelByLevel.comesTo(expected, world, forgetting.program().apply(world));
  }

  private static List<String> unnoticed(List<String> rules, Set<Feature> features) {
    List<String> open = new ArrayList<>(rules);
    for (long seed = 0; seed < MOST_WORLDS && !open.isEmpty(); seed++) {
      World world = TinyWorlds.having(seed, features);
      Optional<Standing> expected = Exhaustive.best(world).map(Exhaustive.Found::standing);
      assertThat(LevelByLevel.comesTo(expected, world, rule -> true))
          .as("with every rule, %s", world.scenario().name())
          .isTrue();
      open.removeIf(
          left -> !LevelByLevel.comesTo(expected, world, rule -> !rule.id().equals(left)));
    }
    return open;
  }
}
