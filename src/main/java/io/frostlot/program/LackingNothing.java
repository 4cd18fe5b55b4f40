package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Packs of some deliveries with which nothing is lacking, where their program is too large for SCIP
 * and small enough for HiGHS: all levels before money are held at zero, what follows from packs is
 * left real, and some more is asked for safety, since whole pieces serve less well than parts of
 * them. It ends soon after the first solution, which takes most of its time: other deliveries are
 * worth more than the rest of these.
 */
final class LackingNothing {
  private static final int CAUTION = 1;

  /** Of more it finds none in half a minute. */
  private static final int MANY_COLUMNS = 5500;

  /** Of the time until the first solution. */
  private static final double THEREAFTER = 0.3;

  private LackingNothing() {}

  /** Is the program of some deliveries one for this? */
  static boolean suits(World part) {
    Model model = Rules.program(part).model();
    return !BranchAndBound.isSoonDone(model) && model.columns().size() <= MANY_COLUMNS;
  }

  /** Packs of each row, by delivery; empty where none were found in the time. */
  static Optional<Map<Slot, Map<Pack, Integer>>> packs(
      World part, Apart apart, Scip.Budget budget, BooleanSupplier stop) {
    World cautious = Sketch.cautious(part, CAUTION);
    Program program = Rules.program(cautious, Formulation.USUAL.withApart(apart.animals()));
    new CoverRows(program).add();
    OrderRoom.add(cautious, program);
    Model model = program.model();
    List<Model.Row> levels = HeldLevels.lackingNothing().rows(model);
    Scip.Task task = Scip.Task.of(model.objective(Level.MONEY), levels, true, budget);
    Patience patience = new Patience();
    Scip.End end =
        Highs.minimise(
            model,
            task,
            new BranchAndBound.Watched(
                () -> stop.getAsBoolean() || patience.isOver(), point -> patience.found()));
    return end.found() ? Optional.of(program.decisions().packs(end.point())) : Optional.empty();
  }

  /** Until some time after the first solution. */
  private static final class Patience {
    private final long begun = System.nanoTime();
    private double most = Double.POSITIVE_INFINITY;

    void found() {
      most = Math.min(most, (1 + THEREAFTER) * (System.nanoTime() - begun));
    }

    boolean isOver() {
      return System.nanoTime() - begun > most;
    }
  }
}
