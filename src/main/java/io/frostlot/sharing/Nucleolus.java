package io.frostlot.sharing;

import io.frostlot.plan.LinearProgram;
import io.frostlot.plan.LinearSolver;
import io.frostlot.plan.Range;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The nucleolus: the one share that makes the pain of the parts, x(S) - c(S), as small as it can
 * be, the largest first, then the next largest, and so on; where the core is not empty it lies in
 * it.
 *
 * <p>A sequence of linear programs: each finds the least largest pain of the parts still open, then
 * holds every part whose pain is that in all best shares (a program of its own for each candidate:
 * a row that is tight in one best point need not be in another), until the parts held fix the
 * share. Members may be asked for more than they pay alone only where costs do not let them split.
 *
 * <p>Source: D. Schmeidler, "The nucleolus of a characteristic function game", SIAM Journal on
 * Applied Mathematics 17, 1969; sequence of programs after M. Maschler, B. Peleg, L. S. Shapley,
 * Mathematics of Operations Research 4, 1979 (both from memory).
 */
public final class Nucleolus {
  private final Game game;
  private final int count;
  private final LinearSolver solver;
  private final Map<Subgroup, Double> held = new LinkedHashMap<>();
  private final Span span;
  private final List<Subgroup> open;

  private Nucleolus(Game game, LinearSolver solver) {
    this.game = game;
    this.solver = solver;
    count = game.members().size();
    span = new Span(count);
    open = new ArrayList<>(game.parts());
    hold(game.all(), game.toShare());
  }

  /** Shares in major units, by member, for the costs reckoned with. */
  public static double[] of(Game game, LinearSolver solver) {
    return new Nucleolus(game, solver).solve();
  }

  private double[] solve() {
    while (!span.isFull()) {
      double[] point = minimise(LeastPain.row(Subgroup.NOBODY, count, 1), rows(List.of()));
      holdWhatMustBe(point, point[count]);
    }
    double[] point = minimise(new double[count + 1], rows(List.of()));
    double[] shares = new double[count];
    System.arraycopy(point, 0, shares, 0, count);
    return shares;
  }

  private void hold(Subgroup some, double amount) {
    held.put(some, amount);
    span.add(LeastPain.row(some, count, 0));
    open.removeIf(other -> span.holds(LeastPain.row(other, count, 0)));
  }

  /** Holds each open part that cannot pay less in any best share. */
  private void holdWhatMustBe(double[] point, double pain) {
    double closest = Double.POSITIVE_INFINITY;
    Subgroup mostBound = open.get(0);
    boolean any = false;
    Iterator<Subgroup> candidates = List.copyOf(open).iterator();
    List<LinearProgram.Row> best = rows(List.of(painIs(pain)));
    while (candidates.hasNext()) {
      Subgroup some = candidates.next();
      double most = game.reckoned(some) + pain;
      if (!open.contains(some) || some.sum(point) < most - LeastPain.TOLERANCE) {
        continue;
      }
      double[] least = minimise(LeastPain.row(some, count, 0), best);
      double slack = most - some.sum(least);
      if (slack <= LeastPain.TOLERANCE) {
        hold(some, most);
        any = true;
      } else if (slack < closest) {
        closest = slack;
        mostBound = some;
      }
    }
    if (!any) {
      hold(mostBound, game.reckoned(mostBound) + pain);
    }
  }

  /** A hair of room, so that what the solver found is not called impossible. */
  private LinearProgram.Row painIs(double pain) {
    double room = LeastPain.TOLERANCE / 100;
    return new LinearProgram.Row(
        LeastPain.row(Subgroup.NOBODY, count, 1), new Range(pain - 1, pain + room));
  }

  private List<LinearProgram.Row> rows(List<LinearProgram.Row> extra) {
    List<LinearProgram.Row> rows = new ArrayList<>(extra);
    held.forEach(
        (some, amount) ->
            rows.add(new LinearProgram.Row(LeastPain.row(some, count, 0), Range.exactly(amount))));
    for (Subgroup some : open) {
      Range within = new Range(Double.NEGATIVE_INFINITY, game.reckoned(some));
      rows.add(new LinearProgram.Row(LeastPain.row(some, count, -1), within));
    }
    return rows;
  }

  private double[] minimise(double[] objective, List<LinearProgram.Row> rows) {
    return solver.minimise(new LinearProgram(objective, rows)).orElseThrow();
  }
}
