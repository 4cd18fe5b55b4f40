package io.frostlot.program;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import io.frostlot.plan.LinearProgram;
import io.frostlot.plan.LinearSolver;
import java.util.Arrays;
import java.util.Optional;

/** Solves plain linear programs with GLOP, a simplex method; feasible within 1e-8. */
public final class Glop implements LinearSolver {
  private static final String EXACT =
      "primal_feasibility_tolerance:1e-9 dual_feasibility_tolerance:1e-9";

  @Override
  public Optional<double[]> minimise(LinearProgram program) {
    NativeLibraries.load();
    MPSolver solver =
        Optional.ofNullable(MPSolver.createSolver("GLOP"))
            .orElseThrow(() -> new IllegalStateException("solver GLOP is not there"));
    try {
      return minimise(program, solver);
    } finally {
      solver.delete();
    }
  }

  private static Optional<double[]> minimise(LinearProgram program, MPSolver solver) {
    if (!solver.setSolverSpecificParametersAsString(EXACT)) {
      throw new IllegalStateException("GLOP does not take " + EXACT);
    }
    MPVariable[] numbers = new MPVariable[program.objective().length];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = solver.makeNumVar(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, "");
      solver.objective().setCoefficient(numbers[i], program.objective()[i]);
    }
    for (LinearProgram.Row row : program.rows()) {
      MPConstraint constraint = solver.makeConstraint(row.within().least(), row.within().most());
      for (int i = 0; i < numbers.length; i++) {
        if (row.coefficients()[i] != 0) {
          constraint.setCoefficient(numbers[i], row.coefficients()[i]);
        }
      }
    }
    return switch (solver.solve()) {
      case OPTIMAL ->
          Optional.of(Arrays.stream(numbers).mapToDouble(MPVariable::solutionValue).toArray());
      case INFEASIBLE -> Optional.empty();
      default -> throw new IllegalStateException("the linear program has no end");
    };
  }
}
