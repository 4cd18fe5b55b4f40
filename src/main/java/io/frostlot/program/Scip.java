package io.frostlot.program;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Solves a {@link Model} with SCIP: branch and bound. */
final class Scip {
  private static final int NODES_IN_ROUND = 100;
  private static final long LONG_MILLIS = 600_000;
  private static final double SLACK = 1e-6;

  /** Else it takes Ctrl-C for itself, says so on standard output, and the program goes on. */
  private static final String LEAVES_SIGNALS = "misc/catchctrlc=FALSE";

  private static volatile Solver inUse = Scip::solve;

  private Scip() {}

  /** What solves. */
  interface Solver {
    End minimise(Model model, Task task);
  }

  /** Puts another solver in its place and returns the one before: for checks of faulty ones. */
  static Solver replacedBy(Solver other) {
    Solver before = inUse;
    inUse = other;
    return before;
  }

  /**
   * What to minimise.
   *
   * @param objective over the columns of the model
   * @param extra rows of this solve only
   * @param relaxed leave columns that follow from others real
   * @param fixed values of columns, NaN where free; or empty
   * @param hint values of columns to begin with, NaN where none; or empty
   */
  record Task(
      Linear objective,
      List<Model.Row> extra,
      boolean relaxed,
      double[] fixed,
      double[] hint,
      Budget budget) {
    Task {
      extra = List.copyOf(extra);
    }

    /** With all columns free, and nothing to begin with. */
    static Task of(Linear objective, List<Model.Row> extra, boolean relaxed, Budget budget) {
      return new Task(objective, extra, relaxed, new double[0], new double[0], budget);
    }

    Task within(Budget other) {
      return new Task(objective, extra, relaxed, fixed, hint, other);
    }

    /** With everything whole that has to be. */
    Task allWhole() {
      return new Task(objective, extra, false, fixed, hint, budget);
    }
  }

  /**
   * How much work.
   *
   * @param milliseconds by the clock
   * @param rounds of {@value NODES_IN_ROUND} nodes, where they are counted
   * @param atRoot no more than the first node
   */
  record Budget(long milliseconds, OptionalInt rounds, boolean atRoot) {
    Budget(long milliseconds, OptionalInt rounds) {
      this(milliseconds, rounds, false);
    }

    /** For the first node alone: a relaxation with what cuts bring there. */
    Budget justTheRoot() {
      return new Budget(milliseconds, rounds, true);
    }

    /** So long by the clock; where rounds are counted, as long as they take. */
    static Budget of(long milliseconds, OptionalInt rounds) {
      return new Budget(rounds.isPresent() ? LONG_MILLIS : milliseconds, rounds);
    }

    static Budget ofMillis(long milliseconds) {
      return new Budget(milliseconds, OptionalInt.empty());
    }
  }

  /**
   * The end of one run.
   *
   * @param point values by column; empty where no solution was found
   * @param bound of the objective
   * @param finished shown best, or shown impossible where no point was found
   */
  record End(double[] point, double bound, boolean finished) {
    /** Nothing found, and nothing shown. */
    static End nothing() {
      return new End(new double[0], Double.NEGATIVE_INFINITY, false);
    }

    boolean found() {
      return point.length > 0;
    }

    boolean impossible() {
      return finished && !found();
    }
  }

  static End minimise(Model model, Task task) {
    if (task.budget().milliseconds() < 1) {
      return End.nothing();
    }
    return believed(inUse.minimise(model, task), task);
  }

  /** A bound above the value of the point found, or none at all, is not believed. */
  static End believed(End end, Task task) {
    if (!end.found()) {
      return end;
    }
    double value = task.objective().at(end.point());
    boolean holds = end.bound() <= value + SLACK * (1 + Math.abs(value));
    return holds ? end : new End(end.point(), Double.NEGATIVE_INFINITY, false);
  }

  static End solve(Model model, Task task) {
    try (Loaded loaded = new Loaded("SCIP", model, task)) {
      MPSolver solver = loaded.solver();
      solver.setTimeLimit(task.budget().milliseconds());
      int nodes = task.budget().atRoot() ? 1 : nodes(task.budget().rounds());
      set(solver, "limits/nodes=" + nodes);
      hint(loaded, task.hint());
      MPSolverParameters parameters = new MPSolverParameters();
      parameters.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
      MPSolver.ResultStatus status = solver.solve(parameters);
      boolean best = status == MPSolver.ResultStatus.OPTIMAL;
      boolean found = best || status == MPSolver.ResultStatus.FEASIBLE;
      double bound = found ? solver.objective().bestBound() : Double.NEGATIVE_INFINITY;
      return new End(
          found ? loaded.point() : new double[0],
          bound,
          best || status == MPSolver.ResultStatus.INFEASIBLE);
    }
  }

  private static void hint(Loaded loaded, double[] values) {
    List<MPVariable> variables = new ArrayList<>();
    List<Double> hints = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      if (!Double.isNaN(values[i])) {
        variables.add(loaded.variables()[i]);
        hints.add(values[i]);
      }
    }
    if (!hints.isEmpty()) {
      loaded
          .solver()
          .setHint(
              variables.toArray(MPVariable[]::new),
              hints.stream().mapToDouble(Double::doubleValue).toArray());
    }
  }

  /** Of a branch and bound, at most. */
  static int nodes(OptionalInt rounds) {
    return rounds.isPresent()
        ? (int) Math.min(Integer.MAX_VALUE, (long) rounds.getAsInt() * NODES_IN_ROUND)
        : Integer.MAX_VALUE;
  }

  /** All settings at once: those of an earlier call are forgotten. */
  static void set(MPSolver solver, String setting) {
    String settings = LEAVES_SIGNALS + "," + setting;
    if (!solver.setSolverSpecificParametersAsString(settings)) {
      throw new IllegalStateException("SCIP does not take " + settings);
    }
  }
}
