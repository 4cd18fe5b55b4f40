package io.frostlot.program;

import io.frostlot.plan.Answer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import java.util.function.LongSupplier;
import java.util.function.Predicate;

/**
 * Raises the bound of the money, by {@link Counting} or by a solver that cuts.
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
   * A stretch of the search.
   *
   * @param loose are plans bounded that are no worse than the best before money, but may not be the
   *     best there?
   * @param levels what all of them are held to
   * @param over is there nothing to go on for?
   */
  private record Stretch(boolean loose, HeldLevels levels, BooleanSupplier over) {}

  /** From now on. */
  private Stretch stretch() {
    Optional<HeldLevels> loose = asGood();
    return new Stretch(
        loose.isPresent(), loose.orElse(held), () -> isOver() || loose.isPresent() != isLoose());
  }

  private boolean isOver() {
    return over.getAsBoolean();
  }

  private boolean isLoose() {
    return asGood().isPresent();
  }

  /** As long as there is something to go on for; says what the last stretch said. */
  private boolean stretches(Predicate<Stretch> search) {
    boolean ended;
    Stretch stretch;
    do {
      stretch = stretch();
      ended = search.test(stretch);
    } while (!isOver() && !best.isProven() && stretch.loose() != isLoose());
    return ended;
  }

  /**
   * Branches on counts; is nothing left to search? As long as there is a plan that meets all meals
   * but may not be the best before money, of the plans that are no worse there.
   */
  boolean count(Written written) {
    return stretches(
        stretch -> {
          try (Counting counting =
              new Counting(
                  Part.of(written, stretch.levels(), millisLeft), this::cutoff, FEW_COLUMNS)) {
            return counting.run(Scip.nodes(rounds), stretch.over(), bound -> tell(stretch, bound));
          }
        });
  }

  /**
   * By a solver that cuts: HiGHS, or SCIP for a moment where that is enough to begin with; where it
   * orders from is told too. Is nothing left to search? Then no plan of the relaxation is better
   * than the bound that was told.
   */
  boolean cut(Program program) {
    relax(program);
    if (program.model().columns().size() > SOON_COUNTED) {
      return stretches(stretch -> cut(program, stretch));
    }
    cutForAMoment(program);
    return false;
  }

  /**
   * By SCIP. Levels are priced, not held: where they must be held a point, and with it a bound, may
   * be slow to come.
   */
  private void cutForAMoment(Program program) {
    Stretch stretch = stretch();
    long millis = Math.min(MOMENT_MILLIS, millisLeft.getAsLong());
    Scip.Task task = stretch.levels().nearly(program).within(Scip.Budget.of(millis, rounds));
    Scip.End end = Scip.minimise(program.model(), task);
    tell(stretch, end.bound());
    if (end.found()) {
      promise(program, end.point());
    }
  }

  private void promise(Program program, double[] point) {
    best.promising().add(program.decisions().ordered(point));
  }

  /** By HiGHS. */
  private boolean cut(Program program, Stretch stretch) {
    Model model = program.model();
    Linear money = model.objective(Level.MONEY);
    double cutoff = cutoff();
    List<Model.Row> rows = new ArrayList<>(stretch.levels().rows(model));
    if (cutoff < Double.POSITIVE_INFINITY) {
      rows.add(Model.extra(-Model.INFINITY, money, cutoff));
    }
    Scip.Budget budget = Scip.Budget.of(millisLeft.getAsLong(), rounds);
    // where rounds are counted, not what is told by the clock
    DoubleConsumer rise =
        rounds.isPresent() ? bound -> {} : bound -> tell(stretch, Math.min(bound, cutoff));
    Scip.End end =
        Highs.minimise(
            model,
            Scip.Task.of(money, rows, true, budget),
            new BranchAndBound.Watched(stretch.over(), point -> promise(program, point), rise));
    tell(stretch, Math.min(end.impossible() ? cutoff : end.bound(), cutoff));
    return end.finished();
  }

  /** The linear relaxation: something to begin with. */
  private void relax(Program program) {
    Stretch stretch = stretch();
    Model model = program.model();
    Linear money = model.objective(Level.MONEY);
    List<Model.Row> levels = stretch.levels().rows(model);
    Relaxation.minimise(model, money, levels, millisLeft.getAsLong())
        .ifPresent(end -> tell(stretch, end.bound()));
  }

  private void tell(Stretch stretch, double bound) {
    if (stretch.loose()) {
      best.proveAsGood(stretch.levels().least(), bound);
    } else {
      best.prove(stretch.levels().least(), bound);
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
