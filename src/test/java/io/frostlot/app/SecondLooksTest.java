package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.BudgetPrice;
import io.frostlot.plan.Comparison;
import io.frostlot.plan.Guesses;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.SecondLook;
import io.frostlot.plan.Simplest;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.units.Money;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SecondLooksTest {
  private static final Limits LIMITS = Limits.ofSeconds(600);
  private final Planner engine = new EnginePlanner();
  @TempDir private Path folder;

  private List<SecondLook> all(World world, Watch watch) {
    Answer.WithPlan shown = (Answer.WithPlan) engine.plan(world, LIMITS, Watch.NONE);
    SecondLooks looks = new SecondLooks(engine, new Solved(world, shown), LIMITS, watch);
    List<SecondLook> all = new ArrayList<>();
    while (looks.hasNext()) {
      looks.next().ifPresent(all::add);
    }
    return all;
  }

  @Test
  void each_thing_is_looked_for_once_and_the_budget_only_where_there_is_one() {
    World world =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(60, 10)).world(folder);
    assertThat(all(world, Watch.NONE))
        .hasExactlyElementsOfTypes(Simplest.class, Comparison.class, Guesses.class);
    Scenario scenario = world.scenario();
    Policy.Budget budget = new Policy.Budget(Money.of(2), Money.ZERO, Money.ZERO);
    Policy policy = scenario.policy().withOrdering(Policy.Ordering.FREE.withBudget(budget));
    assertThat(all(world.withScenario(scenario.withPolicy(policy)), Watch.NONE))
        .hasExactlyElementsOfTypes(
            Simplest.class, BudgetPrice.class, Comparison.class, Guesses.class);
  }

  @Test
  void they_take_half_as_long_again_as_the_plan_took() {
    Limits minute = Limits.ofSeconds(60);
    assertThat(SecondLooks.share(minute, Duration.ofSeconds(40))).isEqualTo(Limits.ofSeconds(20));
    assertThat(SecondLooks.share(minute, Duration.ofSeconds(1))).isEqualTo(Limits.ofSeconds(15));
    assertThat(SecondLooks.share(minute, Duration.ofSeconds(80))).isEqualTo(Limits.ofSeconds(30));
    assertThat(SecondLooks.share(Limits.ofSeconds(2), Duration.ofSeconds(2)))
        .isEqualTo(Limits.ofSeconds(1));
  }

  @Test
  void where_rounds_are_counted_the_clock_is_not_asked() {
    Limits rounds = new Limits(Duration.ofSeconds(1000), OptionalInt.of(3));
    assertThat(SecondLooks.share(rounds, Duration.ofSeconds(1)))
        .isEqualTo(new Limits(Duration.ofSeconds(500), OptionalInt.of(3)));
  }
}
