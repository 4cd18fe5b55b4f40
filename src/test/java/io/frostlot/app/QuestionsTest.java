package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Solved;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Litres;
import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What is known of answers without any bound, only because one question is looser than another. */
class QuestionsTest {
  private static final Solved THERE = allMet();

  /** The same plan in ten times the room. */
  private static final Solved ROOMIER = new Solved(roomier(THERE.world()), THERE.answer());

  private final Questions questions =
      new Questions(new EnginePlanner(), Limits.ofSeconds(600), Watch.NONE);

  private static Solved allMet() {
    for (long seed = 0; ; seed++) {
      World world = TinyWorlds.of(seed);
      if (Engine.solve(world, Limits.ofSeconds(600), Watch.NONE) instanceof Answer.WithPlan plan) {
        Standing standing = plan.plan().standing();
        if (standing.unmet() == 0 && standing.shortfall() == 0) {
          return new Solved(world, new Answer.BestFound(plan.plan(), OptionalDouble.empty()));
        }
      }
    }
  }

  private static World roomier(World world) {
    Scenario.Larder larder = world.scenario().larder();
    List<Freezer> freezers =
        larder.freezers().stream()
            .map(it -> it.withUsable(new Litres(10 * it.usable().microlitres())))
            .toList();
    return world.withScenario(world.scenario().withLarder(larder.withFreezers(freezers)));
  }

  @Test
  void nothing_is_known_of_questions_that_are_not_said_to_be_related() {
    Difference difference = questions.between(THERE, ROOMIER);
    assertThat(difference.saves().least()).isEmpty();
    assertThat(difference.saves().most()).isEmpty();
  }

  @Test
  void what_is_looser_saves_nothing_at_least_and_what_is_stricter_at_most() {
    questions.looser(ROOMIER.world(), THERE.world());

    assertThat(questions.between(THERE, ROOMIER).saves().least()).hasValue(0);
    assertThat(questions.between(THERE, ROOMIER).saves().most()).isEmpty();
    assertThat(questions.between(ROOMIER, THERE).saves().most()).hasValue(0);
    assertThat(questions.between(ROOMIER, THERE).saves().least()).isEmpty();
  }

  /** Tiny rooms are proven, so that the looser answer bounds the stricter one. */
  @Test
  void bounds_of_what_is_looser_hold_for_what_is_stricter() {
    questions.looser(ROOMIER.world(), THERE.world());
    Solved looser = questions.ask(ROOMIER.world(), 1).orElseThrow();
    assertThat(looser.answer()).isInstanceOf(Answer.Proven.class);

    Difference difference = questions.between(THERE, looser);
    assertThat(difference.saves().least().getAsDouble()).isBetween(0.0, THERE.cost());
    assertThat(difference.saves().most().getAsDouble())
        .isBetween(difference.saves().least().getAsDouble(), THERE.cost());
  }

  /** However much time there is: asked again, nothing more is looked for. */
  @Test
  void where_rounds_are_counted_each_question_is_looked_at_once() {
    Limits once = new Limits(Duration.ofMinutes(10), OptionalInt.of(1));
    try (Questions counted = new Questions(new EnginePlanner(), once, Watch.NONE)) {
      Solved first = counted.ask(THERE.world(), 1e-9).orElseThrow();
      assertThat(first.cost()).isGreaterThan(0);
      assertThat(counted.again(THERE.world(), 1)).contains(first);
      assertThat(counted.mayGoOn(1)).isFalse();
      assertThat(questions.mayGoOn(1)).isTrue();
    }
  }
}
