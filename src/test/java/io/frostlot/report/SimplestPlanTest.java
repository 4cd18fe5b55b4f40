package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Simplest;
import io.frostlot.plan.World;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SimplestPlanTest {
  private final World world = HandmadeRoom.world();
  private final Answer.WithPlan shown =
      new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(95));

  private String said(Simplest simplest) {
    Outcome outcome = Outcome.of(world, shown.plan().plan());
    return new PlanReport(HandmadeRoom.inputs(world), shown, outcome, List.of())
        .text(simplest, 100)
        .replaceAll("\\s+", " ");
  }

  @Test
  void that_fewer_orders_are_not_enough_is_said_only_where_it_is_sure() {
    assertThat(said(new Simplest(2, List.of(), true)))
        .contains("THE SIMPLEST PLAN WITHIN 2 %", "It is the one shown");
    assertThat(said(new Simplest(2, List.of(), false)))
        .contains("none was found", "there may be one")
        .doesNotContain("It is the one shown");
  }

  /** The plan shown stands in for another one of the same orders and money. */
  @Test
  void another_plan_is_told_with_its_orders_and_what_it_costs_more() {
    String orders = Integer.toString(shown.plan().plan().orders().size());
    assertThat(said(new Simplest(2, List.of(shown.plan()), true)))
        .contains(
            orders + " orders in place of " + orders,
            "cost the same: fewer are not enough",
            "Hillside Hatch (invented), order by Sun 12 Jan 2031: ");
    assertThat(said(new Simplest(2, List.of(shown.plan()), false)))
        .contains("perhaps fewer would do");
  }
}
