package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The plan made by hand orders for 95.40 in January and for 4.40 in February. */
class BudgetUseTest {
  private static String letter(Policy.Budget budget) {
    World room = HandmadeRoom.world();
    Scenario scenario = room.scenario();
    World world =
        room.withScenario(
            scenario.withPolicy(
                scenario.policy().withOrdering(Policy.Ordering.FREE.withBudget(budget))));
    Answer.Judged judged = HandmadePlan.judged(world);
    return new PlanReport(
            HandmadeRoom.inputs(world),
            new Answer.BestFound(judged, OptionalDouble.empty()),
            Outcome.of(world, judged.plan()),
            List.of())
        .text(80);
  }

  @Test
  void months_and_the_dearest_order_stand_beside_their_budgets() {
    assertThat(letter(new Policy.Budget(Money.of(90), Money.of(100), Money.of("12.50"))))
        .contains(
            "BUDGET, EUR",
            "The dearest order comes to 95.40 of 90.00.",
            "Jan 2031: 107.90 of 100.00.",
            "Feb 2031: 4.40 of 100.00.");
  }

  @Test
  void only_what_is_asked_for_is_said() {
    assertThat(letter(new Policy.Budget(Money.of(90), Money.ZERO, Money.ZERO)))
        .contains("The dearest order")
        .doesNotContain("Jan 2031: ");
    assertThat(letter(Policy.Budget.NONE)).doesNotContain("BUDGET");
  }
}
