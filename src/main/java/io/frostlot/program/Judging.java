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
record Judging(World world, Apart apart) {
  /**
   * Empty where the plan does not hold because its point is beyond a row of the program, by a
   * solver's tolerance (a few microlitres too many in a freezer that is full). Throws
   * IllegalStateException where it keeps to all rows: a fault of the program.
   */
  Optional<Answer.Judged> judge(Program program, double[] point) {
    PlanBuilder builder = new PlanBuilder(program, point);
    boolean keepingIsCharged = !world.scenario().policy().charges().holding().isZero();
    Answer.Judged judged = Rules.judge(world, builder.build(keepingIsCharged));
    if (!keepingIsCharged && !judged.books().breaches().isEmpty()) {
      judged = Rules.judge(world, builder.build(true));
    }
    Optional<String> broken = broken(judged);
    if (broken.isPresent() && program.model().isExceeded(point)) {
      return Optional.empty();
    }
    if (broken.isPresent()) {
      throw new IllegalStateException(broken.get());
    }
    double promised = program.model().objective(Level.SHORTFALL).at(point);
    if (judged.standing().shortfall() > promised + 0.5 && program.decisions().imposesAllTies()) {
      apart.learn(program, judged.plan());
    }
    return Optional.of(judged);
  }

  private Optional<String> broken(Answer.Judged judged) {
    if (!judged.books().breaches().isEmpty()) {
      return Optional.of("a plan breaks a rule: " + judged.books().breaches().get(0));
    }
    Replay replay = Replay.of(world, judged.plan());
    return replay.holds()
        ? Optional.empty()
        : Optional.of("a plan does not hold day by day: " + replay.breaches().get(0));
  }
}
