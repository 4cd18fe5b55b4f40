package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;

/** Plans by the integer program. */
public final class Solving implements Planner {
  @Override
  public Answer plan(World world, Budget budget, Watch watch) {
    Answer answer = Engine.solve(world, budget.time().toMillis());
    if (answer instanceof Answer.WithPlan found) {
      watch.found(found);
    }
    return answer;
  }
}
