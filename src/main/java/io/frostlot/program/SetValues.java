package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What sets of deliveries promise: the least that one may come to when each of its orders is placed
 * in a sketch of the world, with more of the freezers kept back once rounding has lost meals.
 */
record SetValues(World world, Weights weights, Best best, Solving solving)
    implements OrderSets.Values {
  /** Percent of the freezers with each meal lost. */
  private static final int KEPT_BACK_A_LOSS = 8;

  private static final int MOST_KEPT_BACK = 24;

  private static final long CLOSER_MILLIS = 1000;

  /** Percent of the freezers now. */
  int keptBack() {
    return Math.min(MOST_KEPT_BACK, KEPT_BACK_A_LOSS * solving.largeLosses());
  }

  @Override
  public double relaxed(Collection<Slot> slots) {
    Sketch sketch = new Sketch(keptBack(), true);
    Program program = Rules.program(sketch.of(part(slots)));
    List<Model.Row> placed = new ArrayList<>();
    for (OrderDecisions order : program.decisions().orders().values()) {
      placed.add(Model.extra(1, Linear.of(order.open()), 1));
    }
    Model model = program.model();
    Linear objective = weights.objective(model);
    return Relaxation.minimise(model, objective, placed, solving.budget().milliseconds())
        .map(Relaxation.End::bound)
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * What cuts make of it at the root of the set's own program, all levels before money held at
   * zero: tells sets apart that look alike to the relaxation. Only where the best plan lacks
   * nothing and that program is small.
   */
  @Override
  public OptionalDouble closer(Collection<Slot> slots) {
    boolean lacksNothing = best.plan().filter(it -> it.standing().lacksNothing()).isPresent();
    if (!lacksNothing || !solving.goesOn()) {
      return OptionalDouble.empty();
    }
    Model model = Rules.program(part(slots).withoutMoves()).model();
    if (!BranchAndBound.isSmall(model)) {
      return OptionalDouble.empty();
    }
    List<Model.Row> levels = HeldLevels.lackingNothing().rows(model);
    Scip.Budget budget = solving.budget(CLOSER_MILLIS).justTheRoot();
    Scip.Task task = Scip.Task.of(model.objective(Level.MONEY), levels, true, budget);
    Scip.End end = Scip.minimise(model, task);
    double value = end.impossible() ? Double.POSITIVE_INFINITY : end.bound();
    return value > Double.NEGATIVE_INFINITY ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private World part(Collection<Slot> slots) {
    return world.withSlots(slots.stream().sorted().toList());
  }
}
