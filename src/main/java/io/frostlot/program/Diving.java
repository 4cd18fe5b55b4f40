package io.frostlot.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * Rounds the linear relaxation of a program, with every order placed where that can be, to whole
 * packs: of what is not whole yet, orders before promotions before packs, the nearest to whole are
 * held there, or above where that would cost a meal, the relaxation is solved again from where it
 * stands, and so on. A plan of some worth in a few dozen short linear programs.
 */
final class Diving {
  private static final double WHOLE = 1e-6;
  private static final double PART = 0.25;
  private final Program program;
  private final Linear objective;
  private final double dear;
  private final LongSupplier millisLeft;

  /**
   * A dive that has not begun.
   *
   * @param dear a rise of the objective that shows that a meal is lost
   */
  Diving(Program program, Linear objective, double dear, LongSupplier millisLeft) {
    this.program = program;
    this.objective = objective;
    this.dear = dear;
    this.millisLeft = millisLeft;
  }

  /** A column that is not whole yet. */
  private record Step(Var column, double value) {
    double distance() {
      return Math.abs(value - Math.rint(value));
    }
  }

  /** A point whose orders, promotions and packs are whole; empty where none was found. */
  Optional<double[]> dive() {
    try (Simplex simplex = new Simplex(program.model(), objective, List.of(), millisLeft)) {
      program.decisions().orders().values().forEach(order -> simplex.bound(order.open(), 1, 1));
      Simplex.End end = simplex.solve();
      if (end.isImpossible()) {
        simplex.reset();
        end = simplex.solve();
      }
      for (List<Var> stage : stages()) {
        List<Step> steps = steps(stage, end.point());
        while (!steps.isEmpty()) {
          end = hold(simplex, steps.subList(0, (int) Math.ceil(steps.size() * PART)), end);
          steps = steps(stage, end.point());
        }
      }
      return end.point().length == 0 ? Optional.empty() : Optional.of(end.point());
    }
  }

  private List<List<Var>> stages() {
    List<Var> opens = new ArrayList<>();
    List<Var> promotions = new ArrayList<>();
    List<Var> packs = new ArrayList<>();
    for (OrderDecisions order : program.decisions().orders().values()) {
      opens.add(order.open());
      promotions.addAll(order.promotions().values());
      promotions.addAll(order.choices().values());
      order.packs().values().forEach(pack -> packs.add(pack.count()));
    }
    return List.of(opens, promotions, packs);
  }

  private static List<Step> steps(List<Var> stage, double[] point) {
    List<Step> steps = new ArrayList<>();
    for (Var column : point.length == 0 ? List.<Var>of() : stage) {
      Step step = new Step(column, point[column.index()]);
      if (step.distance() > WHOLE) {
        steps.add(step);
      }
    }
    steps.sort(
        Comparator.comparingDouble(Step::distance).thenComparingInt(step -> step.column().index()));
    return steps;
  }

  private Simplex.End hold(Simplex simplex, List<Step> steps, Simplex.End before) {
    List<Simplex.Bounds> own = steps.stream().map(step -> simplex.bounds(step.column())).toList();
    steps.forEach(step -> hold(simplex, step));
    Simplex.End end = simplex.solve();
    if (end.bound() - before.bound() < dear) {
      return end;
    }
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      simplex.bound(step.column(), Math.ceil(step.value()), own.get(i).most());
    }
    Simplex.End raised = simplex.solve();
    if (raised.bound() < end.bound()) {
      return raised;
    }
    steps.forEach(step -> hold(simplex, step));
    return end;
  }

  private static void hold(Simplex simplex, Step step) {
    simplex.bound(step.column(), Math.rint(step.value()), Math.rint(step.value()));
  }
}
