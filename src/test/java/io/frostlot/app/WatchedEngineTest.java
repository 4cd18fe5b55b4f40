package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.files.PlanJson;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Period;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The demo over 168 days, whatever is fed within each window, which takes long to prove. */
@Timeout(1200)
class WatchedEngineTest {
  private final Inputs inputs = longDemo();

  private static Inputs longDemo() {
    MakePlan.Request request =
        new MakePlan.Request(Path.of("scenarios/small-room"), List.of(), List.of());
    Inputs demo = ((MakePlan.Ready) new MakePlan(Engine::solve).prepare(request)).inputs();
    Scenario scenario = demo.world().scenario();
    Period planning =
        new Period(scenario.planning().from(), scenario.planning().from().plusDays(167));
    Policy policy = scenario.policy().withAdequacy(Policy.Adequacy.NONE);
    World world = World.of(scenario.withPlanning(planning).withPolicy(policy));
    return new Inputs(world, demo.digest(), List.of());
  }

  /** Stops at the nth plan. */
  private static final class StopAt implements Watch {
    private final int nth;
    private final List<Answer.WithPlan> seen = new ArrayList<>();

    StopAt(int nth) {
      this.nth = nth;
    }

    @Override
    public boolean stop() {
      return seen.size() >= nth;
    }

    @Override
    public void found(Answer.WithPlan best) {
      seen.add(best);
    }
  }

  @Test
  void plans_are_shown_as_they_get_better_and_the_last_is_the_answer() {
    StopAt watch = new StopAt(Integer.MAX_VALUE);
    Answer answer = Engine.solve(inputs.world(), Limits.ofSeconds(8), watch);
    List<Standing> standings = watch.seen.stream().map(it -> it.plan().standing()).toList();
    for (int i = 1; i < standings.size(); i++) {
      assertThat(standings.get(i)).isLessThanOrEqualTo(standings.get(i - 1));
    }
    assertThat(watch.seen.size()).isGreaterThan(1);
    assertThat(answer).isSameAs(watch.seen.get(watch.seen.size() - 1));
    double cost = standings.get(standings.size() - 1).money().toDouble();
    assertThat(((Answer.WithPlan) answer).bound().getAsDouble()).isBetween(0.0, cost);
  }

  @Test
  void it_stops_when_it_is_told_to() {
    StopAt watch = new StopAt(1);
    long start = System.nanoTime();
    Answer answer = Engine.solve(inputs.world(), Limits.ofSeconds(1000), watch);
    assertThat(answer).isSameAs(watch.seen.get(0));
    assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(60));
  }

  @Test
  void the_same_effort_gives_the_same_answer() {
    Limits effort = new Limits(Duration.ofHours(1), OptionalInt.of(1));
    String once = PlanJson.text(inputs, Engine.solve(inputs.world(), effort, Watch.NONE));
    String again = PlanJson.text(inputs, Engine.solve(inputs.world(), effort, Watch.NONE));
    assertThat(again).isEqualTo(once);
  }
}
