package io.frostlot.sharing;

import io.frostlot.plan.LinearProgram;
import io.frostlot.plan.LinearSolver;
import io.frostlot.plan.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How much the worst-off part of the group must pay above what it would pay by itself, at the
 * least: min e such that x(S) - e &lt;= c(S) for every part S, x(all) = what is to be shared. No
 * share leaves everybody content (the core is empty) exactly when e is above zero.
 *
 * <p>Source: L. S. Shapley, M. Shubik, "Quasi-cores in a monetary economy", Econometrica 34, 1966
 * (from memory).
 */
public final class LeastPain {
  /** Money below which a difference is the solver's, in major units. */
  public static final double TOLERANCE = 1e-6;

  private LeastPain() {}

  /** What is known about whether some share gives nobody a reason to leave. */
  public enum Core {
    THERE,
    EMPTY,
    NOT_SETTLED
  }

  public static Core core(Game game, LinearSolver solver) {
    if (pain(game, some -> game.cost(some).least(), solver) <= TOLERANCE) {
      return Core.THERE;
    }
    return pain(game, some -> game.cost(some).most(), solver) > TOLERANCE
        ? Core.EMPTY
        : Core.NOT_SETTLED;
  }

  /** The least pain for the costs reckoned with; negative where everybody gains. */
  public static double of(Game game, LinearSolver solver) {
    return pain(game, game::reckoned, solver);
  }

  private static double pain(Game game, ToDoubleFunction<Subgroup> cost, LinearSolver solver) {
    int count = game.members().size();
    if (count == 1) {
      return 0;
    }
    List<LinearProgram.Row> rows = new ArrayList<>();
    rows.add(new LinearProgram.Row(row(game.all(), count, 0), Range.exactly(game.toShare())));
    for (Subgroup some : game.parts()) {
      Range within = new Range(Double.NEGATIVE_INFINITY, cost.applyAsDouble(some));
      rows.add(new LinearProgram.Row(row(some, count, -1), within));
    }
    double[] point =
        solver.minimise(new LinearProgram(row(Subgroup.NOBODY, count, 1), rows)).orElseThrow();
    return point[count];
  }

  /** One coefficient per member, 1 for those of a subgroup, and a last one. */
  static double[] row(Subgroup some, int members, double last) {
    double[] row = new double[members + 1];
    some.members().forEach(member -> row[member] = 1);
    row[members] = last;
    return row;
  }
}
