package io.frostlot.program;

import io.frostlot.plan.Answer;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/**
 * Raises the bound of the money by {@link Counting}.
 *
 * @param held what no plan can be below before money
 * @param over is there no use in going on?
 */
record Raising(
    Best best, HeldLevels held, OptionalInt rounds, LongSupplier millisLeft, BooleanSupplier over) {
  private static final double EXACT = 2e-4;
  private static final long FIRST_SLICE_MILLIS = 2500;
  private static final int LONGER = 3;

  /**
   * Branches on counts; is nothing left to search? As long as there is a plan that meets all meals
   * but may not be the best before money, of the plans that are no worse there.
   */
  boolean count(Written written) {
    boolean ended = false;
    boolean again = true;
    while (again) {
      Optional<HeldLevels> loose = asGood();
      HeldLevels levels = loose.orElse(held);
      BooleanSupplier turned =
          () -> over.getAsBoolean() || loose.isPresent() != asGood().isPresent();
      try (Counting counting = new Counting(Part.of(written, levels, millisLeft), this::cutoff)) {
        ended =
            counting.run(
                Scip.nodes(rounds), turned, bound -> tell(loose.isPresent(), levels, bound));
      }
      again = !over.getAsBoolean() && !best.isProven() && loose.isPresent() != asGood().isPresent();
    }
    return ended;
  }

  /**
   * The same by SCIP, which cuts the relaxation and branches on the same counts; each try takes
   * longer than the one before. Where it orders from is told on the way.
   */
  void search(Program program) {
    relax(program);
    Counts.add(program);
    long slice = FIRST_SLICE_MILLIS;
    boolean finished = false;
    while (!finished && !over.getAsBoolean()) {
      boolean loose = asGood().isPresent();
      HeldLevels levels = asGood().orElse(held);
      Scip.Budget budget = Scip.Budget.of(Math.min(slice, millisLeft.getAsLong()), rounds);
      // where levels must be held a point, and with it a bound, may be slow to come
      boolean first = slice == FIRST_SLICE_MILLIS;
      Scip.Task task = first ? levels.nearly(program) : levels.task(program.model());
      Scip.End end = Scip.minimise(program.model(), task.within(budget));
      tell(loose, levels, end.bound());
      if (end.found()) {
        best.promising().add(program.decisions().ordered(end.point()));
      }
      boolean enough = rounds.isPresent() || (end.finished() && !first);
      finished = enough && loose == asGood().isPresent();
      slice *= LONGER;
    }
  }

  /** The linear relaxation: something to begin with. */
  private void relax(Program program) {
    Model model = program.model();
    boolean loose = asGood().isPresent();
    HeldLevels levels = asGood().orElse(held);
    Linear money = model.objective(Level.MONEY);
    Relaxation.minimise(model, money, levels.rows(model), millisLeft.getAsLong())
        .ifPresent(end -> tell(loose, levels, end.bound()));
  }

  private void tell(boolean loose, HeldLevels levels, double bound) {
    if (loose) {
      best.proveAsGood(levels.least(), bound);
    } else {
      best.prove(levels.least(), bound);
    }
  }

  /** The levels of a plan that meets all meals, where more may be reached; else empty. */
  private Optional<HeldLevels> asGood() {
    return best.plan()
        .map(Answer.Judged::standing)
        .filter(it -> it.unmetMust() + it.unmetOther() == 0 && !held.areReachedBy(it))
        .map(HeldLevels::at);
  }

  /** Nothing is lost by leaving out what is no better than the plan in hand. */
  private double cutoff() {
    return best.plan()
        .filter(plan -> held.areReachedBy(plan.standing()))
        .map(plan -> plan.standing().money().toDouble() - exactness(plan))
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Money may be finer than the minor unit; this is about what linear programs tell apart. */
  static double exactness(Answer.Judged plan) {
    return EXACT * (1 + plan.standing().money().toDouble() / 1000);
  }
}
