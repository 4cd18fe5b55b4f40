package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Replay;
import io.frostlot.plan.World;

/**
 * Makes a plan of a solution; every rule and the day-by-day replay must hold before it is shown.
 * What is never eaten is kept as long as that fits and costs nothing. Where animals that share
 * classes cannot be fed as well as the program promised, they are taken apart from then on.
 */
record Judging(World world, Apart apart) {
  /** Throws IllegalStateException where the plan does not hold: a fault of the program. */
  Answer.Judged judge(Program program, double[] point) {
    PlanBuilder builder = new PlanBuilder(program, point);
    boolean keepingIsCharged = !world.scenario().policy().charges().holding().isZero();
    Answer.Judged judged = Rules.judge(world, builder.build(keepingIsCharged));
    if (!keepingIsCharged && !judged.books().breaches().isEmpty()) {
      judged = Rules.judge(world, builder.build(true));
    }
    if (!judged.books().breaches().isEmpty()) {
      throw new IllegalStateException("a plan breaks a rule: " + judged.books().breaches().get(0));
    }
    Replay replay = Replay.of(world, judged.plan());
    if (!replay.holds()) {
      throw new IllegalStateException(
          "a plan does not hold day by day: " + replay.breaches().get(0));
    }
    double promised = program.model().objective(Level.SHORTFALL).at(point);
    if (judged.standing().shortfall() > promised + 0.5 && program.decisions().imposesAllTies()) {
      apart.learn(program, judged.plan());
    }
    return judged;
  }
}
