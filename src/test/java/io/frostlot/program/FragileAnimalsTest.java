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
 */
class FragileAnimalsTest {
  private static final int WORLDS = Integer.getInteger("frostlot.worlds", 40);

  static LongStream seeds() {
    return LongStream.range(0, WORLDS);
  }

  private static World withAdequacy(World world) {
    Policy.Adequacy asked = new Policy.Adequacy(true, Percent.of("97"), Percent.of("105"));
    Scenario scenario = world.scenario();
    return world.withScenario(scenario.withPolicy(scenario.policy().withAdequacy(asked)));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void no_meal_is_lost_to_save_money_or_for_the_sake_of_grams(long seed) {
    World world = TinyWorlds.of(seed);
    String name = world.scenario().name();
    Optional<Standing> expected = Exhaustive.best(world).map(Exhaustive.Found::standing);
    Answer answer = Engine.solve(withAdequacy(world), Limits.ofSeconds(30), Watch.NONE);
    if (expected.isEmpty()) {
      assertThat(answer).as(name).isInstanceOf(Answer.Impossible.class);
      return;
    }
    assertThat(answer).as(name).isInstanceOf(Answer.WithPlan.class);
    Standing found = ((Answer.WithPlan) answer).plan().standing();
    assertThat(found.unmetMust()).as(name).isEqualTo(expected.get().unmetMust());
    assertThat(found.unmetOther()).as(name).isEqualTo(expected.get().unmetOther());
    assertThat(found.shortfall()).as(name).isGreaterThanOrEqualTo(expected.get().shortfall());
  }
}
