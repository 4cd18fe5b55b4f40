package io.frostlot.program;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.Map;
import java.util.Optional;

/** Solves a {@link Model} with SCIP. */
final class Scip {
  private static final int NODES_IN_ROUND = 100;

  private Scip() {}

  /**
   * The end of one run.
   *
   * @param point values by column; empty array where no plan was found
   * @param bound of the objective, safe
   * @param impossible shown to have no solution
   */
  record End(double[] point, double bound, boolean impossible) {
    boolean found() {
      return point.length > 0;
    }
  }

  /**
   * What to minimise.
   *
   * @param held most of each earlier level
   * @param hint a point to begin with, or an empty array
   */
  record Task(Level level, Map<Level, Double> held, double[] hint, Limits limits) {
    Task {
      held = Map.copyOf(held);
    }
  }

  /** Minimises one level, earlier levels held at given values. */
  static End minimise(Model model, Task task) {
    Loader.loadNativeLibraries();
    MPSolver solver =
        Optional.ofNullable(MPSolver.createSolver("SCIP"))
            .orElseThrow(() -> new IllegalStateException("SCIP is not there"));
    MPVariable[] variables = new MPVariable[model.columns().size()];
    for (int i = 0; i < variables.length; i++) {
      Model.Column column = model.columns().get(i);
      variables[i] = solver.makeVar(column.least(), column.most(), column.whole(), "");
    }
    for (Model.Row row : model.rows()) {
      add(solver, variables, row.terms(), row.least(), row.most());
    }
    task.held().forEach((earlier, most) -> {
      Linear amount = model.objective(earlier);
      add(solver, variables, amount.terms(), Double.NEGATIVE_INFINITY, most - amount.constant());
    });
    MPObjective objective = solver.objective();
    Linear.Terms terms = model.objective(task.level()).terms();
    for (int i = 0; i < terms.variables().length; i++) {
      objective.setCoefficient(variables[terms.variables()[i]], terms.coefficients()[i]);
    }
    objective.setOffset(model.objective(task.level()).constant());
    solver.setTimeLimit(task.limits().millis());
    task.limits().rounds().ifPresent(rounds -> limitNodes(solver, rounds));
    if (task.hint().length == variables.length) {
      solver.setHint(variables, task.hint());
    }
    MPSolverParameters parameters = new MPSolverParameters();
    parameters.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
    MPSolver.ResultStatus status = solver.solve(parameters);
    boolean found = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
    double[] point = new double[found ? variables.length : 0];
    for (int i = 0; i < point.length; i++) {
      point[i] = variables[i].solutionValue();
    }
    double bound = found ? objective.bestBound() : Double.NEGATIVE_INFINITY;
    solver.delete();
    return new End(point, bound, status == MPSolver.ResultStatus.INFEASIBLE);
  }

  private static void limitNodes(MPSolver solver, int rounds) {
    String limit = "limits/nodes=" + (long) rounds * NODES_IN_ROUND;
    if (!solver.setSolverSpecificParametersAsString(limit)) {
      throw new IllegalStateException("SCIP does not take " + limit);
    }
  }

  private static void add(
      MPSolver solver, MPVariable[] variables, Linear.Terms terms, double least, double most) {
    MPConstraint row = solver.makeConstraint(least, most);
    for (int i = 0; i < terms.variables().length; i++) {
      row.setCoefficient(variables[terms.variables()[i]], terms.coefficients()[i]);
    }
  }
}
