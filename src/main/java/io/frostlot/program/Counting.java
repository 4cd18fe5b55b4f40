package io.frostlot.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.DoubleSupplier;

/**
 * Branch and bound on {@link Counts}, best bound first: a bound of the money that keeps rising.
 * Each node is one linear program, solved from the basis of the one before.
 */
final class Counting {
  /** Money that a node without a solution is taken to bring where there is no plan to compare. */
  private static final double MUCH = 100;

  private final Simplex simplex;
  private final Counts counts;
  private final DoubleSupplier cutoff;
  private final PriorityQueue<Node> open =
      new PriorityQueue<>(
          Comparator.comparingDouble(Node::bound)
              .thenComparing(node -> -node.changes().size())
              .thenComparingLong(Node::number));
  private final Gains gains = new Gains();
  private double settled = Double.POSITIVE_INFINITY;
  private long numbered;

  /**
   * What is told on the way.
   *
   * @param bound after every node
   * @param whole points at which all counts are whole
   */
  record Progress(DoubleConsumer bound, Consumer<double[]> whole) {}

  /** Bounds of one column, beside those that it has. */
  private record Change(Var column, double least, double most) {}

  /**
   * A solved relaxation with some columns held.
   *
   * @param column to branch on, and its value
   */
  private record Node(double bound, List<Change> changes, Var column, double value, long number) {}

  /**
   * A tree of which nothing is searched yet.
   *
   * @param cutoff nodes that cannot come below it are of no use
   */
  Counting(Simplex simplex, Counts counts, DoubleSupplier cutoff) {
    this.simplex = simplex;
    this.counts = counts;
    this.cutoff = cutoff;
  }

  /**
   * Searches until nothing is left, which it says, or it is told to stop.
   *
   * @param most nodes
   */
  boolean run(int most, BooleanSupplier stop, Progress progress) {
    look(Double.NEGATIVE_INFINITY, List.of(), progress);
    progress.bound().accept(bound());
    for (int done = 0; done < most && !open.isEmpty() && !stop.getAsBoolean(); done++) {
      Node node = open.poll();
      if (node.bound() < cutoff.getAsDouble()) {
        branch(node, progress);
      }
      progress.bound().accept(bound());
    }
    return open.isEmpty();
  }

  /** Nothing is below it; nodes that were of no use are only known not to come below the cutoff. */
  private double bound() {
    double least = open.isEmpty() ? Double.POSITIVE_INFINITY : open.peek().bound();
    return Math.min(settled, Math.min(least, cutoff.getAsDouble()));
  }

  private void branch(Node node, Progress progress) {
    double below = Math.floor(node.value());
    double least = Double.NEGATIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    Change down = new Change(node.column(), least, below);
    Change up = new Change(node.column(), below + 1, most);
    double lower = look(node.bound(), with(node.changes(), down), progress);
    double higher = look(node.bound(), with(node.changes(), up), progress);
    gains.learn(node.column(), node.value(), gain(node, lower), gain(node, higher));
  }

  /** No more than is of use: a node without a solution, or beyond the cutoff, is as good as any. */
  private double gain(Node from, double bound) {
    double most = cutoff.getAsDouble() - from.bound();
    double useful = Double.isInfinite(most) ? MUCH : Math.max(0, most);
    return Math.min(useful, bound - from.bound());
  }

  /**
   * Solves one relaxation, the next one near it, so that the simplex method has not far to go.
   *
   * @return its bound; infinite where there is no solution
   */
  private double look(double atLeast, List<Change> changes, Progress progress) {
    simplex.reset();
    changes.forEach(change -> simplex.tighten(change.column(), change.least(), change.most()));
    Simplex.End end = simplex.solve();
    double bound = Math.max(atLeast, end.bound());
    if (end.isImpossible() || bound >= cutoff.getAsDouble()) {
      return bound;
    }
    Optional<Var> column =
        end.point().length == 0 ? Optional.empty() : counts.toBranchOn(end.point(), gains);
    if (column.isPresent()) {
      double value = end.point()[column.get().index()];
      open.add(new Node(bound, changes, column.get(), value, numbered++));
      return bound;
    }
    settled = Math.min(settled, bound);
    if (end.point().length > 0) {
      progress.whole().accept(end.point());
    }
    return bound;
  }

  private static List<Change> with(List<Change> changes, Change change) {
    List<Change> longer = new ArrayList<>(changes);
    longer.add(change);
    return List.copyOf(longer);
  }
}
