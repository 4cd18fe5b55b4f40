package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.oracle.TinyWorlds;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Replay;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import java.time.Duration;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A solver that fails from some call on loses no plan in hand and proves nothing that is false. */
@Timeout(300)
class FaultySolverTest {

  /** What becomes of what the solver says. */
  private enum Fault {
    THROWS,
    FINDS_NOTHING,
    HIGH_BOUND,
    ENDLESS_BOUND,
    NO_BOUND;

    Scip.End change(Scip.End end) {
      return switch (this) {
        case THROWS -> throw new IllegalStateException("injected");
        case FINDS_NOTHING -> new Scip.End(new double[0], Double.NEGATIVE_INFINITY, false);
        case HIGH_BOUND -> new Scip.End(end.point(), end.bound() + 1000, end.finished());
        case ENDLESS_BOUND -> new Scip.End(end.point(), Double.POSITIVE_INFINITY, end.found());
        case NO_BOUND -> new Scip.End(end.point(), Double.NaN, end.finished());
      };
    }
  }

  static Stream<Arguments> faults() {
    return Stream.of(Fault.values())
        .flatMap(fault -> Stream.of(0, 2).map(from -> Arguments.of(fault, from)));
  }

  private static Answer withFault(World world, Fault fault, int from) {
    AtomicInteger calls = new AtomicInteger();
    Scip.Solver real = Scip.replacedBy(Scip::solve);
    Scip.replacedBy(
        (model, task) -> {
          Scip.End end = real.minimise(model, task);
          return calls.getAndIncrement() < from ? end : fault.change(end);
        });
    try {
      return Engine.solve(
          world, new Limits(Duration.ofMillis(500), OptionalInt.empty()), Watch.NONE);
    } catch (IllegalStateException e) {
      assertThat(e).hasMessageContaining("the search failed");
      return new Answer.NothingFound();
    } finally {
      Scip.replacedBy(real);
    }
  }

  @ParameterizedTest(name = "{0} from call {1} on")
  @MethodSource("faults")
  void a_faulty_solver_is_survived(Fault fault, int from) {
    int worlds = 0;
    for (long seed = 3; worlds < 2; seed++) {
      World world = TinyWorlds.of(seed);
      if (!(Engine.solve(world, Limits.ofSeconds(60), Watch.NONE) instanceof Answer.Proven sure)) {
        continue;
      }
      worlds++;
      Standing best = sure.plan().standing();
      Answer answer = withFault(world, fault, from);
      String name = world.scenario().name() + ", " + answer;
      assertThat(answer).as(name).isNotInstanceOf(Answer.Impossible.class);
      if (answer instanceof Answer.WithPlan found) {
        assertThat(Rules.judge(world, found.plan().plan()).books().breaches()).as(name).isEmpty();
        assertThat(Replay.of(world, found.plan().plan()).breaches()).as(name).isEmpty();
        assertThat(found.plan().standing()).as(name).isGreaterThanOrEqualTo(best);
      }
      if (answer instanceof Answer.Proven proven) {
        assertThat(proven.plan().standing()).as(name).isEqualTo(best);
      }
    }
  }
}
