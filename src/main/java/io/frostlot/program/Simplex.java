package io.frostlot.program;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.LongSupplier;

/**
 * The linear relaxation of a {@link Model}, solved again and again with other bounds of its
 * columns: GLOP's dual simplex, without its preprocessing, goes on from the basis before, and where
 * that takes long its primal simplex from there, which is also the faster one without a basis.
 */
final class Simplex implements AutoCloseable {
  private static final String DUAL =
      "use_preprocessing:false use_dual_simplex:true max_number_of_iterations:";

  private static final String PRIMAL =
      "use_preprocessing:false use_dual_simplex:false max_number_of_iterations:";

  private static final String AFRESH =
      "use_preprocessing:true use_dual_simplex:false max_number_of_iterations:-1";

  /** More have lost their way. */
  private static final int MOST_ITERATIONS = 20_000;

  /** From a basis, of those that it took without one. */
  private static final double PART = 0.25;

  private static final long FEW_ITERATIONS = 500;

  private final Model model;
  private final Loaded loaded;
  private final LongSupplier millisLeft;
  private final Set<Integer> changed = new HashSet<>();
  private final long few;
  private long usual = MOST_ITERATIONS;
  private boolean begun;

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
    this(model, objective, extra, millisLeft, FEW_ITERATIONS);
  }

  /**
   * Gives up sooner, or later, where it goes on from a basis.
   *
   * @param few iterations that it has there at least
   */
  Simplex(Model model, Linear objective, List<Model.Row> extra, LongSupplier millisLeft, long few) {
    this.model = model;
    this.few = few;
    this.millisLeft = millisLeft;
    loaded =
        new Loaded("GLOP", model, Scip.Task.of(objective, extra, true, Scip.Budget.ofMillis(0)));
  }

  private void set(String parameters) {
    if (!loaded.solver().setSolverSpecificParametersAsString(parameters)) {
      throw new IllegalStateException("GLOP does not take " + parameters);
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

  /** Bounds beside those that a column has. */
  void tighten(Var column, double least, double most) {
    Bounds now = bounds(column);
    bound(column, Math.max(now.least(), least), Math.min(now.most(), most));
  }

  Bounds bounds(Var column) {
    MPVariable variable = loaded.variables()[column.index()];
    return new Bounds(variable.lb(), variable.ub());
  }

  End solve() {
    if (millisLeft.getAsLong() < 1) {
      return new End(new double[0], Double.NEGATIVE_INFINITY);
    }
    MPSolver.ResultStatus status = MPSolver.ResultStatus.NOT_SOLVED;
    if (begun) {
      status = run(DUAL + Math.max(few, (long) (PART * usual)));
      if (!isSettled(status)) {
        status = run(PRIMAL + Math.max(few, usual / 2));
      }
    }
    if (!isSettled(status)) {
      status = fromTheBeginning();
    }
    if (status == MPSolver.ResultStatus.INFEASIBLE) {
      return new End(new double[0], Double.POSITIVE_INFINITY);
    }
    if (status != MPSolver.ResultStatus.OPTIMAL) {
      return new End(new double[0], Double.NEGATIVE_INFINITY);
    }
    double value = loaded.solver().objective().value();
    return new End(loaded.point(), Relaxation.safe(value));
  }

  /** Without a basis to go on from; the next run has one, unless this one needs preprocessing. */
  private MPSolver.ResultStatus fromTheBeginning() {
    loaded.solver().reset();
    MPSolver.ResultStatus status = run(PRIMAL + MOST_ITERATIONS);
    begun = isSettled(status);
    if (begun) {
      usual = loaded.solver().iterations();
      return status;
    }
    loaded.solver().reset();
    return run(AFRESH);
  }

  private MPSolver.ResultStatus run(String parameters) {
    long millis = millisLeft.getAsLong();
    if (millis < 1) {
      return MPSolver.ResultStatus.NOT_SOLVED;
    }
    set(parameters);
    loaded.solver().setTimeLimit(millis);
    return loaded.solver().solve();
  }

  private static boolean isSettled(MPSolver.ResultStatus status) {
    return status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.INFEASIBLE;
  }

  @Override
  public void close() {
    loaded.close();
  }
}
