package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.Exhaustive;
import io.frostlot.oracle.Feature;
import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The engine held to trying everything, on random tiny worlds; {@code -Dfrostlot.worlds=500} asks
 * for more of them.
 */
class EngineEqualsExhaustiveTest {
  private static final int WORLDS = Integer.getInteger("frostlot.worlds", 60);

  /** Enough for some whose meals are merged. */
  private static final int WORLDS_TO_MERGE = Math.max(60, WORLDS);

  private static final Limits LIMITS = Limits.ofSeconds(30);

  /** Steps, sales and values of an order that depend on each other. */
  private static final Set<Feature> LADDER =
      Set.of(
          Feature.BREAK,
          Feature.SALE,
          Feature.SECOND_SALE,
          Feature.DISCOUNT,
          Feature.MINIMUM_ORDER,
          Feature.FREE_SHIPPING);

  /** Prey that may be moved from one freezer to another. */
  private static final Set<Feature> MOVED =
      Set.of(Feature.SECOND_FREEZER, Feature.MOVES, Feature.STOCK);

  static LongStream someSeeds() {
    return LongStream.range(0, (WORLDS + 2) / 3);
  }

  static LongStream seeds() {
    return LongStream.range(0, WORLDS);
  }

  private static Optional<Standing> exhaustive(World world) {
    return Exhaustive.best(world).map(Exhaustive.Found::standing);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void finds_and_proves_what_trying_everything_finds(long seed) {
    compare(TinyWorlds.of(seed));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("someSeeds")
  void the_whole_price_ladder_at_once_comes_to_what_trying_everything_finds(long seed) {
    compare(TinyWorlds.having(seed, LADDER));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("someSeeds")
  void food_in_a_second_freezer_comes_to_what_trying_everything_finds(long seed) {
    compare(TinyWorlds.having(seed, Set.of(Feature.FOOD_ELSEWHERE, Feature.SECOND_FREEZER)));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("someSeeds")
  void prey_moved_between_freezers_comes_to_what_trying_everything_finds(long seed) {
    compare(TinyWorlds.having(seed, MOVED));
  }

  private static void compare(World world) {
    Optional<Standing> expected = exhaustive(world);
    Answer answer = Engine.solve(world, LIMITS, Watch.NONE);
    if (expected.isEmpty()) {
      assertThat(answer).as(world.scenario().name()).isInstanceOf(Answer.Impossible.class);
    } else {
      assertThat(answer).as(world.scenario().name()).isInstanceOf(Answer.Proven.class);
      assertSame(world, ((Answer.Proven) answer).plan().standing(), expected.get());
    }
  }

  /** Equal before money; money never below, and within the half minor unit of what is proven. */
  private static void assertSame(World world, Standing found, Standing expected) {
    String name = world.scenario().name();
    assertThat(found.sameBeforeMoney(expected)).as("%s: %s, %s", name, found, expected).isTrue();
    assertThat(found.money()).as(name).isGreaterThanOrEqualTo(expected.money());
    assertThat(found.money().minus(expected.money()).toDouble())
        .as(name)
        .isLessThanOrEqualTo(Math.pow(10, -world.decimals()) / 2);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_coarser_program_is_a_relaxation(long seed) {
    World world = TinyWorlds.of(seed);
    Optional<Standing> expected = exhaustive(world);
    Grain late = new Grain(1, 1, 2, false);
    Grain nights = Grain.DAYS.withNightsTogether();
    for (Grain grain : List.of(Grain.ofStep(2), late, Grain.DELIVERIES, nights)) {
      expected.ifPresent(
          standing ->
              assertThat(LevelByLevel.allows(standing, world, grain))
                  .as(world.scenario().name() + grain)
                  .isTrue());
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void a_program_with_one_freezer_for_several_is_a_relaxation(long seed) {
    World world = TinyWorlds.of(seed);
    Optional<Standing> expected = exhaustive(world);
    expected.ifPresent(
        standing ->
            assertThat(LevelByLevel.allows(standing, Pool.of(world), Grain.DAYS))
                .as(world.scenario().name())
                .isTrue());
  }

  @Test
  void meals_merged_or_not_have_the_same_optimum() {
    int merged = 0;
    for (long seed = 0; seed < WORLDS_TO_MERGE; seed++) {
      World world = TinyWorlds.of(seed);
      World unmerged = unmerged(world);
      if (classes(unmerged) > classes(world)) {
        merged++;
        assertThat(LevelByLevel.comesTo(exhaustive(world), unmerged, rule -> true))
            .as(world.scenario().name())
            .isTrue();
      }
    }
    assertThat(merged).as("worlds with meals that are merged").isPositive();
  }

  private static int classes(World world) {
    return Rules.program(world).decisions().served().size();
  }

  /** A tail price says nothing of a planned meal, but keeps it apart from others. */
  private static World unmerged(World world) {
    List<Demand> apart = new ArrayList<>();
    for (Demand demand : world.demands()) {
      apart.add(
          demand.tail()
              ? demand
              : new Demand(demand.meal(), demand.options(), false, Money.of(apart.size() + 1)));
    }
    return world.withDemands(apart);
  }
}
