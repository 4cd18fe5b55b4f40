package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Replay;
import io.frostlot.plan.World;
import java.util.Optional;

/**
 * Makes a plan of a solution; every rule and the day-by-day replay must hold before it is shown.
 * What is never eaten is kept as long as that fits and costs nothing. Where animals that share
 * classes cannot be fed as well as the program promised, they are taken apart from then on.
 */
record Judging(World world, Apart apart, Optional<Refeeding> refeeding) {
  /** As the program says. */
  Judging(World world, Apart apart) {
    this(world, apart, Optional.empty());
  }

  /** And then fed better, where the program is told only a part of what animals should have. */
  Judging withRefeeding() {
    return new Judging(world, apart, Refeeding.whereNeeded(world));
  }

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
    return fed(judged);
  }

  /** Fed better where that is done at all. */
  Answer.Judged fed(Answer.Judged judged) {
    return refeeding.map(it -> it.better(judged)).orElse(judged);
  }
}
