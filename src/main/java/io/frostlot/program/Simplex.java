package io.frostlot.program;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.LongSupplier;

/**
 * The linear relaxation of a {@link Model}, solved again and again with other bounds of its
 * columns: GLOP's dual simplex, without its preprocessing, goes on from the basis before.
 */
final class Simplex implements AutoCloseable {
  /** Relative tolerance of the simplex method, taken off so that a bound is safe. */
  private static final double TOLERANCE = 1e-7;

  private static final String INCREMENTAL = "use_preprocessing:false use_dual_simplex:true";
  private final Model model;
  private final Loaded loaded;
  private final LongSupplier millisLeft;
  private final Set<Integer> changed = new HashSet<>();

  /**
   * The end of one run.
   *
   * @param point values by column; empty where time was short
   * @param bound a safe lower bound of the objective; infinite where nothing satisfies the rows
   */
  record End(double[] point, double bound) {
    boolean isImpossible() {
      return bound == Double.POSITIVE_INFINITY;
    }
  }

  /** Bounds of a column now. */
  record Bounds(double least, double most) {}

  Simplex(Model model, Linear objective, List<Model.Row> extra, LongSupplier millisLeft) {
    this.model = model;
    this.millisLeft = millisLeft;
    loaded =
        new Loaded("GLOP", model, Scip.Task.of(objective, extra, true, Scip.Budget.ofMillis(0)));
    if (!loaded.solver().setSolverSpecificParametersAsString(INCREMENTAL)) {
      throw new IllegalStateException("GLOP does not take " + INCREMENTAL);
    }
  }

  /** All columns as the model has them. */
  void reset() {
    for (int column : changed) {
      Model.Column own = model.columns().get(column);
      loaded.variables()[column].setBounds(own.least(), own.most());
    }
    changed.clear();
  }

  void bound(Var column, double least, double most) {
    loaded.variables()[column.index()].setBounds(least, most);
    changed.add(column.index());
  }

  Bounds bounds(Var column) {
    MPVariable variable = loaded.variables()[column.index()];
    return new Bounds(variable.lb(), variable.ub());
  }

  End solve() {
    long millis = millisLeft.getAsLong();
    if (millis < 1) {
      return new End(new double[0], Double.NEGATIVE_INFINITY);
    }
    loaded.solver().setTimeLimit(millis);
    MPSolver.ResultStatus status = loaded.solver().solve();
    if (status == MPSolver.ResultStatus.INFEASIBLE) {
      return new End(new double[0], Double.POSITIVE_INFINITY);
    }
    if (status != MPSolver.ResultStatus.OPTIMAL) {
      return new End(new double[0], Double.NEGATIVE_INFINITY);
    }
    double value = loaded.solver().objective().value();
    return new End(loaded.point(), value - TOLERANCE * (1 + Math.abs(value)));
  }

  @Override
  public void close() {
    loaded.close();
  }
}
