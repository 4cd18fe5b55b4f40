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
  private final Simplex simplex;
  private final Counts counts;
  private final DoubleSupplier cutoff;
  private final PriorityQueue<Node> open =
      new PriorityQueue<>(
          Comparator.comparingDouble(Node::bound)
              .thenComparing(node -> -node.changes().size())
              .thenComparingLong(Node::number));
  private double settled = Double.POSITIVE_INFINITY;
  private long numbered;

  /**
   * What is told on the way.
   *
   * @param bound after every node
   * @param whole points at which all counts are whole
   */
  record Progress(DoubleConsumer bound, Consumer<double[]> whole) {}

  /** Bounds of one column. */
  private record Change(Var column, double least, double most) {}

  private record Node(double bound, List<Change> changes, long number) {}

  /**
   * A tree of which nothing is searched yet.
   *
   * @param cutoff nodes that cannot come below it are of no use
   */
  Counting(Simplex simplex, Counts counts, DoubleSupplier cutoff) {
    this.simplex = simplex;
    this.counts = counts;
    this.cutoff = cutoff;
    open.add(new Node(Double.NEGATIVE_INFINITY, List.of(), numbered++));
  }

  /**
   * Searches until nothing is left, which it says, or it is told to stop.
   *
   * @param most nodes
   */
  boolean run(int most, BooleanSupplier stop, Progress progress) {
    for (int done = 0; done < most && !open.isEmpty() && !stop.getAsBoolean(); done++) {
      Node node = open.poll();
      if (node.bound() < cutoff.getAsDouble()) {
        branch(node, progress);
      }
      progress.bound().accept(bound());
    }
    return open.isEmpty();
  }

  /** Nothing is below it. */
  private double bound() {
    double least = open.isEmpty() ? cutoff.getAsDouble() : open.peek().bound();
    return Math.min(settled, least);
  }

  private void branch(Node node, Progress progress) {
    simplex.reset();
    node.changes().forEach(change -> simplex.bound(change.column(), change.least(), change.most()));
    Simplex.End end = simplex.solve();
    if (end.isImpossible()) {
      return;
    }
    double bound = Math.max(node.bound(), end.bound());
    if (bound >= cutoff.getAsDouble()) {
      return;
    }
    Optional<Var> column =
        end.point().length == 0 ? Optional.empty() : counts.furthestFromWhole(end.point());
    if (column.isEmpty()) {
      settled = Math.min(settled, bound);
      if (end.point().length > 0) {
        progress.whole().accept(end.point());
      }
      return;
    }
    double below = Math.floor(end.point()[column.get().index()]);
    Simplex.Bounds now = simplex.bounds(column.get());
    add(node, bound, new Change(column.get(), now.least(), below));
    add(node, bound, new Change(column.get(), below + 1, now.most()));
  }

  private void add(Node parent, double bound, Change change) {
    List<Change> changes = new ArrayList<>(parent.changes());
    changes.add(change);
    open.add(new Node(bound, List.copyOf(changes), numbered++));
  }
}
