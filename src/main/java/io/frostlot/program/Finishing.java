package io.frostlot.program;

import io.frostlot.plan.Answer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * From a point of a program to a plan: holds packs, promotions and the like, and settles what
 * follows from them.
 *
 * @param objective what a plan weighs
 */
record Finishing(Program program, Linear objective, WholePacks wholePacks, Judging judging) {
  private static final long MILLIS = 1500;
  private static final long LONG_MILLIS = 3000;
  private static final double WHOLE = 1e-6;

  /** Money that is not worth a longer search. */
  private static final double NEARLY = 0.001;

  /**
   * Empty where there is no such plan.
   *
   * @param thorough also where each choice is not next to its value
   */
  Optional<Answer.Judged> finish(double[] found, OptionalInt rounds, boolean thorough) {
    if (!wholePacks.withinMostBoxes(program, found)) {
      return Optional.empty();
    }
    if (isWhole(found)) {
      return judging.judge(program, found);
    }
    double[] fixed = held(found);
    boolean isMuch = !BranchAndBound.isSoonDone(program.model());
    Scip.End run = isMuch && thorough ? byHighs(fixed, rounds) : Scip.End.nothing();
    if (!run.found()) {
      run = byScip(found, fixed, rounds, thorough && !isMuch);
    }
    return run.found() ? judging.judge(program, run.point()) : Optional.empty();
  }

  /** Where there is much to choose it is sooner done, and comes closer, than SCIP. */
  private Scip.End byHighs(double[] fixed, OptionalInt rounds) {
    Scip.Budget budget = Scip.Budget.of(LONG_MILLIS, rounds);
    Scip.Task any = new Scip.Task(objective, List.of(), false, fixed, new double[0], budget);
    return Highs.minimise(
        program.model(), any, new BranchAndBound.Watched(() -> false, point -> {}));
  }

  /** First with each choice next to its value. */
  private Scip.End byScip(double[] found, double[] fixed, OptionalInt rounds, boolean thorough) {
    Scip.Budget budget = Scip.Budget.of(MILLIS, rounds);
    Scip.Task near = new Scip.Task(objective, near(found), false, fixed, new double[0], budget);
    Scip.End run = Scip.minimise(program.model(), near);
    if (thorough && (!run.found() || objective.at(run.point()) > objective.at(found) + NEARLY)) {
      Scip.Task any = new Scip.Task(objective, List.of(), false, fixed, run.point(), budget);
      Scip.End free = Scip.minimise(program.model(), any);
      run = free.found() ? free : run;
    }
    return run;
  }

  /** Packs and promotions as they are, whole; boxes and what follows free. */
  private double[] held(double[] found) {
    double[] held = new double[found.length];
    for (int i = 0; i < held.length; i++) {
      boolean hold = program.model().columns().get(i).kind() == Model.Kind.WHOLE;
      held[i] = hold ? Math.rint(found[i]) : Double.NaN;
    }
    program
        .decisions()
        .orders()
        .values()
        .forEach(order -> held[order.boxes().index()] = Double.NaN);
    return held;
  }

  /** Each choice served one of the whole numbers of meals next to its value. */
  private List<Model.Row> near(double[] found) {
    return program.decisions().served().stream()
        .flatMap(served -> served.byChoice().stream())
        .map(
            meals ->
                Model.extra(
                    Math.floor(found[meals.index()] + WHOLE),
                    Linear.of(meals),
                    Math.ceil(found[meals.index()] - WHOLE)))
        .toList();
  }

  private boolean isWhole(double[] point) {
    for (int i = 0; i < point.length; i++) {
      boolean follows = program.model().columns().get(i).kind() == Model.Kind.FOLLOWS;
      if (follows && Math.abs(point[i] - Math.rint(point[i])) > WHOLE) {
        return false;
      }
    }
    return true;
  }
}
