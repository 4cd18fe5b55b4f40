package io.frostlot.program;

import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * A part of the tree of {@link Counting}: all nodes that are solved as one program, with other
 * bounds of its columns. Where many of its deliveries are closed, what is left is a smaller program
 * of its own, and each of its linear programs is solved several times faster.
 */
final class Part implements AutoCloseable {
  private final Counts counts;
  private final Simplex simplex;
  private final Consumer<double[]> whole;
  private final List<Counts.Held> held;
  private final Optional<Source> source;

  /** Bounds of a count, beside those that it has. */
  record Change(Counts.Count count, double least, double most) {}

  /**
   * What parts are written down from.
   *
   * @param levels what no plan can be below before money
   */
  private record Source(Written written, HeldLevels levels, LongSupplier millisLeft) {
    /** The least money where sums of a program of more deliveries are held. */
    Part part(List<Counts.Held> held) {
      Model model = written.program().model();
      Counts counts = new Counts(written.program());
      List<Model.Row> rows = new ArrayList<>(levels.rows(model));
      rows.addAll(counts.rows(held));
      Simplex simplex = new Simplex(model, model.objective(Level.MONEY), rows, millisLeft);
      return new Part(counts, simplex, written::whole, held, Optional.of(this));
    }

    Source of(Written other) {
      return new Source(other, levels, millisLeft);
    }
  }

  private Part(
      Counts counts,
      Simplex simplex,
      Consumer<double[]> whole,
      List<Counts.Held> held,
      Optional<Source> source) {
    this.counts = counts;
    this.simplex = simplex;
    this.whole = whole;
    this.held = held;
    this.source = source;
  }

  /**
   * All that is searched, one program.
   *
   * @param whole told of points at which all counts are whole
   */
  static Part undivided(Counts counts, Simplex simplex, Consumer<double[]> whole) {
    return new Part(counts, simplex, whole, List.of(), Optional.empty());
  }

  /**
   * The least money of a world, of which parts are written down anew.
   *
   * @param levels what no plan can be below before money
   */
  static Part of(Written written, HeldLevels levels, LongSupplier millisLeft) {
    return new Source(written, levels, millisLeft).part(List.of());
  }

  /** The linear relaxation with some changes. */
  Simplex.End solve(List<Change> changes) {
    simplex.reset();
    changes.forEach(it -> simplex.tighten(it.count().column(), it.least(), it.most()));
    return simplex.solve();
  }

  int columns() {
    return counts.columns();
  }

  /** What to branch on; empty where all counts are whole. */
  Optional<Counts.Count> toBranchOn(double[] point, Gains gains) {
    return counts.toBranchOn(point, gains);
  }

  /** All counts are whole at a point, of which something is made. */
  void whole(double[] point) {
    whole.accept(point);
  }

  /**
   * A program of its own for some changes.
   *
   * @param least share of its deliveries that must be closed by them; empty where fewer are, or a
   *     change is of a column that another program has not
   */
  Optional<Part> smaller(List<Change> changes, double least) {
    if (source.isEmpty() || changes.stream().anyMatch(it -> it.count().sum().isEmpty())) {
      return Optional.empty();
    }
    List<Counts.Held> all = held(changes);
    Set<Slot> closed = Counts.closed(all);
    closed.retainAll(counts.slots());
    return closed.isEmpty() || closed.size() < least * counts.slots().size()
        ? Optional.empty()
        : source.map(from -> from.of(from.written().without(closed)).part(all));
  }

  /** The same less relaxed, for those changes that another program has; empty where it is exact. */
  Optional<Part> finer(List<Change> changes) {
    return source.flatMap(
        from -> from.written().finer().map(it -> from.of(it).part(held(changes))));
  }

  private List<Counts.Held> held(List<Change> changes) {
    List<Counts.Held> all = new ArrayList<>(held);
    for (Change change : changes) {
      change
          .count()
          .sum()
          .map(sum -> new Counts.Held(sum, change.least(), change.most()))
          .ifPresent(all::add);
    }
    return List.copyOf(all);
  }

  @Override
  public void close() {
    simplex.close();
  }
}
