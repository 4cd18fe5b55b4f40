package io.frostlot.program;

import com.google.ortools.linearsolver.MPSolver;
import java.util.List;
import java.util.Optional;

/** The linear relaxation of a {@link Model}: every column real; solved with GLOP. */
final class Relaxation {
  /** Relative tolerance of the simplex method, taken off so that a bound is safe. */
  private static final double TOLERANCE = 1e-7;

  private Relaxation() {}

  /**
   * A solved relaxation.
   *
   * @param bound a safe lower bound of the objective
   */
  record End(double[] point, double bound) {}

  /** A bound that is safe where linear programs came to a value. */
  static double safe(double value) {
    return value - TOLERANCE * (1 + Math.abs(value));
  }

  /** Empty where the time was too short, or nothing satisfies even the relaxation. */
  static Optional<End> minimise(
      Model model, Linear objective, List<Model.Row> extra, long milliseconds) {
    if (milliseconds < 1) {
      return Optional.empty();
    }
    Scip.Task task = Scip.Task.of(objective, extra, true, Scip.Budget.ofMillis(milliseconds));
    try (Loaded loaded = new Loaded("GLOP", model, task)) {
      loaded.solver().setTimeLimit(milliseconds);
      if (loaded.solver().solve() != MPSolver.ResultStatus.OPTIMAL) {
        return Optional.empty();
      }
      double value = loaded.solver().objective().value();
      return Optional.of(new End(loaded.point(), safe(value)));
    }
  }
}
