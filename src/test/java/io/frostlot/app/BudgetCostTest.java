package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.BudgetPrice;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.report.PlanReport;
import io.frostlot.units.Money;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A mouse at 1.00 is eaten on each of four Wednesdays, on which the shop is open. An order is
 * reckoned at 0.30: one order for all costs 4.30, two of two mice 4.60.
 */
class BudgetCostTest {
  private static final Limits LIMITS = Limits.ofSeconds(600);
  private final Planner engine = new EnginePlanner();
  @TempDir private Path folder;

  private World world(Policy.Budget budget) {
    String policy =
        ", \"tailDays\": 0, \"charges\": {\"perOrder\": \"0.30\", \"perDeliveryDay\": 0}";
    World world =
        new OneMouseShop(
                OneMouseShop.SINGLES,
                new OneMouseShop.Extras("", policy),
                new OneMouseShop.Keeping(60, 10))
            .world(folder);
    Scenario scenario = world.scenario();
    return world.withScenario(
        scenario.withPolicy(
            scenario.policy().withOrdering(Policy.Ordering.FREE.withBudget(budget))));
  }

  private Optional<BudgetPrice> cost(Policy.Budget budget, Watch watch) {
    World world = world(budget);
    Answer.WithPlan shown = (Answer.WithPlan) engine.plan(world, LIMITS, Watch.NONE);
    return new BudgetCost(engine).of(shown, world, LIMITS, watch);
  }

  @Test
  void a_budget_of_two_mice_an_order_costs_one_more_order() {
    Policy.Budget two = new Policy.Budget(Money.of(2), Money.ZERO, Money.ZERO);
    assertThat(cost(two, Watch.NONE))
        .hasValueSatisfying(
            price -> {
              assertThat(price.without().sameMeals()).isTrue();
              assertThat(price.without().found()).isEqualTo(Money.of("0.30"));
              assertThat(price.toPay()).isEqualTo(Money.of(4));
            });
    assertThat(cost(two, Watch.stopping(() -> true))).isEmpty();
  }

  @Test
  void a_budget_that_is_large_enough_costs_nothing() {
    assertThat(cost(new Policy.Budget(Money.of(4), Money.ZERO, Money.ZERO), Watch.NONE))
        .hasValueSatisfying(price -> assertThat(price.without().found().isZero()).isTrue());
  }

  /** Four mice in one month cost 4.00, a third more than 3.00; nothing else lacks. */
  @Test
  void a_budget_that_cannot_be_kept_leaves_the_meals_the_same_without_it() {
    World world = world(new Policy.Budget(Money.ZERO, Money.of(3), Money.ZERO));
    Answer.WithPlan shown = (Answer.WithPlan) engine.plan(world, LIMITS, Watch.NONE);
    assertThat(shown.plan().standing().shortfall()).isEqualTo(34);
    BudgetPrice price = new BudgetCost(engine).of(shown, world, LIMITS, Watch.NONE).orElseThrow();
    assertThat(price.without().sameMeals()).isTrue();
    assertThat(price.without().found().isZero()).isTrue();
    String said =
        new PlanReport(
                new Inputs(world, "", List.of()),
                shown,
                new Solved(world, shown).outcome(),
                List.of())
            .text(price, 100)
            .replaceAll("\\s+", " ");
    assertThat(said)
        .contains(
            "It cannot be kept with as many meals met and no other rule giving way: 34 percent"
                + " beyond it is the least. Without it: the same meals for the same money. Its"
                + " orders come to 4.00 EUR, those of the plan shown to 4.00 EUR.");
  }

  @Test
  void where_there_is_no_budget_nothing_is_said() {
    assertThat(cost(Policy.Budget.NONE, Watch.NONE)).isEmpty();
  }
}
