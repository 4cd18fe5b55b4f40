package io.frostlot.program;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.stream.DoubleStream;

/** A way to solve a {@link Model}. */
interface BranchAndBound {
  /** How long SCIP may take where HiGHS goes on. */
  long MOMENT_MILLIS = 1000;

  /** HiGHS has nothing to show of a program of more columns within a minute. */
  int MANY_COLUMNS = 5000;

  /** SCIP is soon done with programs of no more columns; in others HiGHS is. */
  int FEW_COLUMNS = 2500;

  Scip.End minimise(Model model, Scip.Task task, Watched watched);

  /**
   * Who looks on.
   *
   * @param stop asked whether to end
   * @param better told of solutions on the way
   * @param rise told of bounds on the way, where the solver tells any
   */
  record Watched(BooleanSupplier stop, Consumer<double[]> better, DoubleConsumer rise) {
    /** Bounds are not looked at. */
    Watched(BooleanSupplier stop, Consumer<double[]> better) {
      this(stop, better, bound -> {});
    }
  }

  static boolean isSoonDone(Model model) {
    return model.columns().size() <= FEW_COLUMNS;
  }

  static boolean isSmall(Model model) {
    return model.columns().size() <= MANY_COLUMNS;
  }

  /**
   * By two solvers in turn: what SCIP, which takes hints, does not settle within a moment goes to
   * HiGHS, everything whole there, unless the program is large: there SCIP goes on.
   */
  static Scip.End inTurn(Model model, Scip.Task task, Watched watched) {
    if (!isSmall(model)) {
      return Scip.minimise(model, task);
    }
    long millis = task.budget().milliseconds();
    long moment = task.budget().rounds().isPresent() ? millis : Math.min(MOMENT_MILLIS, millis);
    Scip.End first = Scip.minimise(model, task.within(budget(moment, task)));
    if (first.finished() || (millis <= moment && task.budget().rounds().isEmpty())) {
      return first;
    }
    Scip.Task rest = task.allWhole().within(budget(Math.max(millis - moment, moment), task));
    Scip.End then = Highs.minimise(model, rest, watched);
    return then.finished() ? then : better(first, then, task);
  }

  private static Scip.Budget budget(long millis, Scip.Task task) {
    return new Scip.Budget(millis, task.budget().rounds());
  }

  /** The better point of two runs that did not end, and the higher bound. */
  private static Scip.End better(Scip.End first, Scip.End then, Scip.Task task) {
    double bound = DoubleStream.of(first.bound(), then.bound()).max().orElseThrow();
    boolean other =
        then.found()
            && (!first.found()
                || task.objective().at(then.point()) <= task.objective().at(first.point()));
    return new Scip.End(other ? then.point() : first.point(), bound, false);
  }
}
