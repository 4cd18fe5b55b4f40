package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Replay;
import io.frostlot.plan.World;

/** Makes a plan of a solution; every rule and the day-by-day replay must hold before it is shown. */
record Judging(World world) {
  /** Throws IllegalStateException where the plan does not hold: a fault of the program. */
  Answer.Judged judge(Program program, double[] point) {
    Plan plan = new PlanBuilder(world, program, point).build();
    Answer.Judged judged = Rules.judge(world, plan);
    if (!judged.books().breaches().isEmpty()) {
      throw new IllegalStateException("a plan breaks a rule: " + judged.books().breaches().get(0));
    }
    Replay replay = Replay.of(world, plan);
    if (!replay.holds()) {
      throw new IllegalStateException(
          "a plan does not hold day by day: " + replay.breaches().get(0));
    }
    return judged;
  }
}
