package io.frostlot.program;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.Optional;

/** A model put into one solver of OR-Tools. */
final class Loaded implements AutoCloseable {
  private final MPSolver solver;
  private final MPVariable[] variables;

  Loaded(String name, Model model, Scip.Task task) {
    NativeLibraries.load();
    solver =
        Optional.ofNullable(MPSolver.createSolver(name))
            .orElseThrow(() -> new IllegalStateException("solver " + name + " is not there"));
    variables = new MPVariable[model.columns().size()];
    for (int i = 0; i < variables.length; i++) {
      Model.Column column = model.columns().get(i);
      boolean whole = column.isWhole(task.relaxed());
      boolean free = i >= task.fixed().length || Double.isNaN(task.fixed()[i]);
      variables[i] =
          solver.makeVar(
              free ? column.least() : task.fixed()[i],
              free ? column.most() : task.fixed()[i],
              whole,
              "");
    }
    model.rows().forEach(this::add);
    task.extra().forEach(this::add);
    MPObjective objective = solver.objective();
    Linear.Terms terms = task.objective().terms();
    for (int i = 0; i < terms.variables().length; i++) {
      objective.setCoefficient(variables[terms.variables()[i]], terms.coefficients()[i]);
    }
    objective.setOffset(task.objective().constant());
  }

  private void add(Model.Row row) {
    MPConstraint constraint = solver.makeConstraint(row.least(), row.most());
    Linear.Terms terms = row.terms();
    for (int i = 0; i < terms.variables().length; i++) {
      constraint.setCoefficient(variables[terms.variables()[i]], terms.coefficients()[i]);
    }
  }

  MPSolver solver() {
    return solver;
  }

  MPVariable[] variables() {
    return variables;
  }

  double[] point() {
    double[] point = new double[variables.length];
    for (int i = 0; i < point.length; i++) {
      point[i] = variables[i].solutionValue();
    }
    return point;
  }

  @Override
  public void close() {
    solver.delete();
  }
}
