package io.frostlot.program;

import io.frostlot.plan.Answer;
import java.util.ArrayList;
import java.util.List;
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

  /** Columns in which counting comes as far as HiGHS, and sooner. */
  private static final int SOON_COUNTED = 7500;

  private static final long MOMENT_MILLIS = 2500;
  private static final int FEW_COLUMNS = 2000;

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
      try (Counting counting =
          new Counting(Part.of(written, levels, millisLeft), this::cutoff, FEW_COLUMNS)) {
        ended =
            counting.run(
                Scip.nodes(rounds), turned, bound -> tell(loose.isPresent(), levels, bound));
      }
      again = !over.getAsBoolean() && !best.isProven() && loose.isPresent() != asGood().isPresent();
    }
    return ended;
  }

  /**
   * By a solver that cuts: HiGHS, or SCIP for a moment where that is enough to begin with; where it
   * orders from is told too. Is nothing left to search? Then no plan of the relaxation is better
   * than the bound that was told.
   */
  boolean cut(Program program) {
    relax(program);
    if (program.model().columns().size() > SOON_COUNTED) {
      return cutByHighs(program);
    }
    cutForAMoment(program);
    return false;
  }

  /**
   * By SCIP. Levels are priced, not held: where they must be held a point, and with it a bound, may
   * be slow to come.
   */
  private void cutForAMoment(Program program) {
    boolean loose = asGood().isPresent();
    HeldLevels levels = asGood().orElse(held);
    long millis = Math.min(MOMENT_MILLIS, millisLeft.getAsLong());
    Scip.Task task = levels.nearly(program).within(Scip.Budget.of(millis, rounds));
    Scip.End end = Scip.minimise(program.model(), task);
    tell(loose, levels, end.bound());
    if (end.found()) {
      best.promising().add(program.decisions().ordered(end.point()));
    }
  }

  /** Level for level as {@link #count} does. */
  private boolean cutByHighs(Program program) {
    boolean again = true;
    boolean ended = false;
    while (again) {
      Optional<HeldLevels> loose = asGood();
      HeldLevels levels = loose.orElse(held);
      BooleanSupplier turned =
          () -> over.getAsBoolean() || loose.isPresent() != asGood().isPresent();
      Scip.End end = cut(program, loose.isPresent(), levels, turned);
      ended = end.finished();
      if (end.found()) {
        best.promising().add(program.decisions().ordered(end.point()));
      }
      again = !over.getAsBoolean() && !best.isProven() && loose.isPresent() != asGood().isPresent();
    }
    return ended;
  }

  private Scip.End cut(Program program, boolean loose, HeldLevels levels, BooleanSupplier stop) {
    Model model = program.model();
    Linear money = model.objective(Level.MONEY);
    double cutoff = cutoff();
    List<Model.Row> rows = new ArrayList<>(levels.rows(model));
    if (cutoff < Double.POSITIVE_INFINITY) {
      rows.add(Model.extra(-Model.INFINITY, money, cutoff));
    }
    Scip.Budget budget = Scip.Budget.of(millisLeft.getAsLong(), rounds);
    BranchAndBound.Watched watched =
        new BranchAndBound.Watched(
            stop,
            point -> best.promising().add(program.decisions().ordered(point)),
            bound -> {
              if (rounds.isEmpty()) {
                tell(loose, levels, Math.min(bound, cutoff));
              }
            });
    Scip.End end = Highs.minimise(model, Scip.Task.of(money, rows, true, budget), watched);
    tell(loose, levels, Math.min(end.impossible() ? cutoff : end.bound(), cutoff));
    return end;
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
