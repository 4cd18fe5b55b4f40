package io.frostlot.program;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;

/**
 * One run of SCIP that can be looked at between slices of time: it goes on where it stopped.
 *
 * <p>All settings are SCIP's own but for one propagator, which does not survive being gone on with.
 */
final class Slices implements AutoCloseable {
  private static final String GOES_ON = "propagating/genvbounds/freq=-1";
  private final Loaded loaded;
  private final MPSolverParameters exact;
  private long milliseconds;

  Slices(Model model, Scip.Task task) {
    loaded = new Loaded("SCIP", model, task);
    exact = new MPSolverParameters();
    exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
    Scip.set(loaded.solver(), GOES_ON);
  }

  /** Goes on for so long; the bound is that of the whole run. */
  Scip.End goOn(long more) {
    milliseconds += more;
    MPSolver solver = loaded.solver();
    solver.setTimeLimit(milliseconds);
    MPSolver.ResultStatus status = solver.solve(exact);
    boolean best = status == MPSolver.ResultStatus.OPTIMAL;
    boolean found = best || status == MPSolver.ResultStatus.FEASIBLE;
    return new Scip.End(
        found ? loaded.point() : new double[0],
        found ? solver.objective().bestBound() : Double.NEGATIVE_INFINITY,
        best || status == MPSolver.ResultStatus.INFEASIBLE);
  }

  @Override
  public void close() {
    loaded.close();
  }
}
