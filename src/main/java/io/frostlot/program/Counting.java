package io.frostlot.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.function.DoubleSupplier;

/**
 * Branch and bound on {@link Counts}, best bound first: a bound of the money that keeps rising.
 * Each node is one linear program, solved from the basis of the one before; where it closes enough
 * deliveries, that of a smaller {@link Part}.
 */
final class Counting implements AutoCloseable {
  /** Money that a node without a solution is taken to bring where there is no plan to compare. */
  private static final double MUCH = 100;

  /** Of the deliveries of a part. */
  private static final double CLOSED = 0.15;

  private static final int MOST_PARTS = 24;

  private final Part whole;
  private final DoubleSupplier cutoff;
  private final int few;
  private final PriorityQueue<Node> open =
      new PriorityQueue<>(
          Comparator.comparingDouble(Node::bound)
              .thenComparing(node -> -node.depth())
              .thenComparingLong(Node::number));

  /** Nodes of each part that wait to be branched on. */
  private final Map<Part, Integer> waiting = new HashMap<>();

  private final Gains gains = new Gains();
  private double settled = Double.POSITIVE_INFINITY;
  private long numbered;

  /**
   * A solved relaxation with some counts held.
   *
   * @param count to branch on, and its value
   * @param depth branchings above it
   */
  private record Node(
      Part part,
      double bound,
      List<Part.Change> changes,
      Counts.Count count,
      double value,
      int depth,
      long number) {}

  /**
   * A tree of which nothing is searched yet.
   *
   * @param cutoff nodes that cannot come below it are of no use
   * @param few columns of a program that are soon solved as they are: parts of it gain nothing
   */
  Counting(Part whole, DoubleSupplier cutoff, int few) {
    this.whole = whole;
    this.cutoff = cutoff;
    this.few = few;
  }

  /**
   * Searches until nothing is left, which it says, or it is told to stop.
   *
   * @param most nodes
   * @param rise told the bound after every node
   */
  boolean run(int most, BooleanSupplier stop, DoubleConsumer rise) {
    begin(whole, Double.NEGATIVE_INFINITY, 0);
    rise.accept(bound());
    for (int done = 0; done < most && !open.isEmpty() && !stop.getAsBoolean(); done++) {
      Node node = open.poll();
      if (node.bound() < cutoff.getAsDouble()) {
        goOn(node);
      }
      forget(node.part());
      rise.accept(bound());
    }
    return open.isEmpty();
  }

  /** Nothing is below it; nodes that were of no use are only known not to come below the cutoff. */
  private double bound() {
    double least = open.isEmpty() ? Double.POSITIVE_INFINITY : open.peek().bound();
    return Math.min(settled, Math.min(least, cutoff.getAsDouble()));
  }

  /** In a smaller part where that can be; else it is branched on. */
  private void goOn(Node node) {
    boolean worth = waiting.size() < MOST_PARTS && node.part().columns() >= few;
    Optional<Part> smaller = worth ? node.part().smaller(node.changes(), CLOSED) : Optional.empty();
    smaller.ifPresentOrElse(part -> begin(part, node.bound(), node.depth()), () -> branch(node));
  }

  private void branch(Node node) {
    double below = Math.floor(node.value());
    double least = Double.NEGATIVE_INFINITY;
    double most = Double.POSITIVE_INFINITY;
    double lower = branch(node, new Part.Change(node.count(), least, below));
    double higher = branch(node, new Part.Change(node.count(), below + 1, most));
    gains.learn(node.count(), node.value(), gain(node, lower), gain(node, higher));
  }

  private double branch(Node node, Part.Change change) {
    List<Part.Change> changes = new ArrayList<>(node.changes());
    changes.add(change);
    return look(node.part(), node.bound(), List.copyOf(changes), node.depth() + 1);
  }

  /** The first node of a part. */
  private double begin(Part part, double atLeast, int depth) {
    waiting.put(part, 1);
    double bound = look(part, atLeast, List.of(), depth);
    forget(part);
    return bound;
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
  private double look(Part part, double atLeast, List<Part.Change> changes, int depth) {
    Simplex.End end = part.solve(changes);
    double bound = Math.max(atLeast, end.bound());
    if (end.isImpossible() || bound >= cutoff.getAsDouble()) {
      return bound;
    }
    if (end.point().length == 0) {
      settled = Math.min(settled, bound);
      return bound;
    }
    Optional<Counts.Count> count = part.toBranchOn(end.point(), gains);
    if (count.isEmpty()) {
      return settle(part, bound, changes, end.point(), depth);
    }
    double value = end.point()[count.get().column().index()];
    open.add(new Node(part, bound, changes, count.get(), value, depth, numbered++));
    waiting.merge(part, 1, Integer::sum);
    return bound;
  }

  /** What is whole may not be so in a program of less, or a finer one. */
  private double settle(
      Part part, double bound, List<Part.Change> changes, double[] point, int depth) {
    part.whole(point);
    Optional<Part> other = part.smaller(changes, 0).or(() -> part.finer(changes));
    if (other.isPresent()) {
      return begin(other.get(), bound, depth);
    }
    settled = Math.min(settled, bound);
    return bound;
  }

  /** One node less of a part, which is closed after its last. */
  private void forget(Part part) {
    waiting.merge(part, -1, Integer::sum);
    if (waiting.get(part) == 0) {
      waiting.remove(part);
      part.close();
    }
  }

  @Override
  public void close() {
    waiting.keySet().forEach(Part::close);
    waiting.clear();
  }
}
