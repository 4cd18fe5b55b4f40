package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.BudgetPrice;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.util.List;
import java.util.Optional;

/** What a budget costs: the world is planned again without it, begun with the plan shown. */
public final class BudgetCost {
  private final Planner planner;

  public BudgetCost(Planner planner) {
    this.planner = planner;
  }

  /**
   * What the best plan without the budget has over the one shown; empty where there is no budget,
   * or none was found in time.
   *
   * @param watch once it says stop, the answer is not wanted
   */
  public Optional<BudgetPrice> of(Answer.WithPlan shown, World world, Limits limits, Watch watch) {
    if (world.scenario().policy().ordering().budget().isNone()) {
      return Optional.empty();
    }
    World unlimited = Loosened.unlimited(world);
    return new Share(planner, limits, watch)
        .answerFrom(List.of(shown.plan().plan()), unlimited, 1)
        .filter(Answer.WithPlan.class::isInstance)
        .map(answer -> new Solved(unlimited, (Answer.WithPlan) answer))
        .map(without -> BudgetPrice.between(new Solved(world, shown).atBestAs(without), without));
  }
}
