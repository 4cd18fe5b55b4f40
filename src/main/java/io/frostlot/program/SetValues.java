package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * What sets of deliveries promise: the least that one may come to when each of its orders is placed
 * in a sketch of the world, with more of the freezers kept back once rounding has lost meals.
 */
record SetValues(World world, Solving solving) {
  /** Percent of the freezers with each meal lost. */
  private static final int KEPT_BACK_A_LOSS = 8;

  private static final int MOST_KEPT_BACK = 24;

  /** Percent of the freezers now. */
  int keptBack() {
    return Math.min(MOST_KEPT_BACK, KEPT_BACK_A_LOSS * solving.losses());
  }

  /** Infinite where there is nothing. */
  double of(Collection<Slot> slots) {
    Sketch sketch = new Sketch(keptBack(), true);
    Program program = Rules.program(sketch.of(world.withSlots(slots.stream().sorted().toList())));
    List<Model.Row> placed = new ArrayList<>();
    for (OrderDecisions order : program.decisions().orders().values()) {
      placed.add(Model.extra(1, Linear.of(order.open()), 1));
    }
    Model model = program.model();
    Linear objective = Weights.of(world).objective(model);
    return Relaxation.minimise(model, objective, placed, solving.budget().milliseconds())
        .map(Relaxation.End::bound)
        .orElse(Double.POSITIVE_INFINITY);
  }
}
