package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.Exhaustive;
import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.units.Percent;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * However dear it is, and whatever gives way: in random tiny worlds as many meals of those that
 * must eat are met as trying everything finds, and then as many others; {@code
 * -Dfrostlot.worlds=500} asks for more worlds.
 *
 * <p>Where adequacy is not asked for, asking for it lets nothing fall less short. Where it is, what
 * falls short is held to trying everything under the same band: a narrower band need not lack more
 * than a wider one, since where nothing lies inside it, it reaches to the nearest that can be had,
 * which may be beyond the other (seeds 154 and 202: 50 to 58.8 g of four meals become 54.3 to 60
 * g).
 */
class FragileAnimalsTest {
  private static final int WORLDS = Integer.getInteger("frostlot.worlds", 40);

  /** Less is lacking there with the narrower band. */
  private static final long[] NOT_NESTED = {154, 202};

  static LongStream seeds() {
    return LongStream.concat(LongStream.range(0, WORLDS), LongStream.of(NOT_NESTED)).distinct();
  }

  private static World withAdequacy(World world) {
    Policy.Adequacy asked = new Policy.Adequacy(true, Percent.of("97"), Percent.of("105"));
    Scenario scenario = world.scenario();
    return world.withScenario(scenario.withPolicy(scenario.policy().withAdequacy(asked)));
  }

  private static Optional<Standing> exhaustive(World world) {
    return Exhaustive.best(world).map(Exhaustive.Found::standing);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void no_meal_is_lost_to_save_money_or_for_the_sake_of_grams(long seed) {
    World world = TinyWorlds.of(seed);
    String name = world.scenario().name();
    World asked = withAdequacy(world);
    Optional<Standing> expected = exhaustive(world);
    Answer answer = Engine.solve(asked, Limits.ofSeconds(300), Watch.NONE);
    if (expected.isEmpty()) {
      assertThat(answer).as(name).isInstanceOf(Answer.Impossible.class);
      return;
    }
    assertThat(answer).as(name).isInstanceOf(Answer.WithPlan.class);
    Standing found = ((Answer.WithPlan) answer).plan().standing();
    assertThat(found.unmetMust()).as(name).isEqualTo(expected.get().unmetMust());
    assertThat(found.unmetOther()).as(name).isEqualTo(expected.get().unmetOther());
    if (world.scenario().policy().adequacy().asked()) {
      long least = exhaustive(asked).orElseThrow().shortfall();
      assertThat(found.shortfall()).as(name).isEqualTo(least);
    } else {
      assertThat(found.shortfall()).as(name).isGreaterThanOrEqualTo(expected.get().shortfall());
    }
  }
}
