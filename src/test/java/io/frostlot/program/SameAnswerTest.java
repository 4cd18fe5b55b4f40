package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Replay;
import io.frostlot.plan.World;
import java.time.Duration;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Ended by a set amount of work the answer is the same every time; interrupted at any moment it is
 * a plan that holds, or none. {@code -Dfrostlot.interruptions=100} interrupts more often.
 */
class SameAnswerTest {
  private static final int INTERRUPTIONS = Integer.getInteger("frostlot.interruptions", 10);
  private static final int RUNS = 10;
  private static final int MOST_MILLIS = 400;

  static LongStream seeds() {
    return LongStream.range(0, 20)
        .filter(
            seed ->
                Engine.solve(TinyWorlds.of(seed), Limits.ofSeconds(60), Watch.NONE)
                    instanceof Answer.Proven)
        .limit(3);
  }

  static LongStream moments() {
    return new SplittableRandom(2031).longs(INTERRUPTIONS, 0, MOST_MILLIS);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void the_same_effort_gives_the_same_answer_in_ten_runs(long seed) {
    World world = TinyWorlds.of(seed);
    Limits effort = new Limits(Duration.ofHours(1), OptionalInt.of(2));
    Answer.Judged first = ((Answer.WithPlan) Engine.solve(world, effort, Watch.NONE)).plan();
    for (int run = 1; run < RUNS; run++) {
      Answer again = Engine.solve(world, effort, Watch.NONE);
      assertThat(((Answer.WithPlan) again).plan().plan())
          .as("%s, run %d", world.scenario().name(), run)
          .isEqualTo(first.plan());
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void what_is_proven_is_the_same_in_ten_runs(long seed) {
    World world = TinyWorlds.of(seed);
    Answer.Proven first = (Answer.Proven) Engine.solve(world, Limits.ofSeconds(60), Watch.NONE);
    for (int run = 1; run < RUNS; run++) {
      Answer again = Engine.solve(world, Limits.ofSeconds(60), Watch.NONE);
      assertThat(again).isInstanceOf(Answer.Proven.class);
      assertThat(((Answer.Proven) again).plan().plan()).isEqualTo(first.plan().plan());
    }
  }

  @ParameterizedTest(name = "after {0} ms")
  @MethodSource("moments")
  void interrupted_at_any_moment_there_is_a_plan_that_holds_or_none(long milliseconds) {
    World world = TinyWorlds.of(milliseconds % 40);
    long end = System.nanoTime() + milliseconds * 1_000_000;
    Watch watch =
        new Watch() {
          @Override
          public boolean stop() {
            return System.nanoTime() >= end;
          }

          @Override
          public void found(Answer.WithPlan best) {}
        };
    Answer answer = Engine.solve(world, Limits.ofSeconds(60), watch);
    if (answer instanceof Answer.WithPlan found) {
      assertThat(Rules.judge(world, found.plan().plan()).books().breaches()).isEmpty();
      assertThat(Replay.of(world, found.plan().plan()).breaches()).isEmpty();
    } else {
      assertThat(answer).isInstanceOfAny(Answer.NothingFound.class, Answer.Impossible.class);
    }
  }
}
