package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Moving;
import io.frostlot.plan.World;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * Solves the programs of a world and of parts of its deliveries, for {@link Improving}: by branch
 * and bound from a plan or from where a dive ends.
 */
final class Solving {
  private static final long ROUND_MILLIS = 6000;
  private static final long POLISH_MILLIS = 3000;
  private static final long NEAR_MILLIS = 8000;
  private static final long MINUTE_MILLIS = 60_000;

  /** A dive in a program of fewer columns takes no time worth sparing. */
  private static final int FEW_COLUMNS = 3000;

  /** Percent of the freezers that dives keep back, in turn. */
  private static final int[] KEPT_BACK = {0, 10, 5, 15};

  private final Best best;
  private final LongSupplier millisLeft;
  private final OptionalInt rounds;
  private final Consumer<Answer.Judged> found;
  private final Judging judging;
  private final Weights weights;
  private long slice = ROUND_MILLIS;
  private int losses;
  private int largeLosses;
  private boolean beyondFirst;

  /**
   * Nothing is solved yet.
   *
   * @param found told every plan
   */
  Solving(
      Judging judging,
      Best best,
      Consumer<Answer.Judged> found,
      LongSupplier millisLeft,
      OptionalInt rounds) {
    this.judging = judging;
    this.best = best;
    this.found =
        plan -> {
          beyondFirst = true;
          found.accept(plan);
        };
    beyondFirst = best.plan().isPresent();
    this.millisLeft = millisLeft;
    this.rounds = rounds;
    weights = Weights.of(judging.world());
  }

  boolean goesOn() {
    return millisLeft.getAsLong() > 0 && !best.isProven() && !best.isImpossible();
  }

  double nanosLeft() {
    return millisLeft.getAsLong() * 1e6;
  }

  /** How often a dive lost meals. */
  int losses() {
    return losses;
  }

  /** The same in programs that are not small, where branch and bound does not find them again. */
  int largeLosses() {
    return largeLosses;
  }

  /** Are meals unmet in the best plan? */
  boolean leavesMeals() {
    return best.plan().filter(plan -> plan.standing().unmet() > 0).isPresent();
  }

  /** Does something fall short in the best plan? */
  boolean fallsShort() {
    return best.plan().filter(plan -> plan.standing().shortfall() > 0).isPresent();
  }

  /** Is the program of the best plan's deliveries a small one? */
  boolean isSmall() {
    return best.plan()
        .map(this::part)
        .filter(part -> BranchAndBound.isSmall(Rules.program(part).model()))
        .isPresent();
  }

  /** What the best plan weighs. */
  double value() {
    return weights.of(best.plan());
  }

  /** For one linear program. */
  Scip.Budget budget() {
    return budget(ROUND_MILLIS);
  }

  Scip.Budget budget(long most) {
    OptionalInt one = rounds.isPresent() ? OptionalInt.of(1) : OptionalInt.empty();
    return Scip.Budget.of(Math.min(most, millisLeft.getAsLong()), one);
  }

  /**
   * The program of some deliveries, first as if nothing could be moved between freezers, which is
   * much smaller.
   *
   * @return the plan found, if there is one, and whether nothing better is left there
   */
  Attempt.Result solve(World part) {
    double before = value();
    Attempt.Result result = search(part.withoutMoves(), Optional.empty());
    if (value() < before && !new Moving(part).days().isEmpty()) {
      search(part, result.plan());
    }
    return result;
  }

  /** The same orders, with the animals fed as well as can be; empty where that was not found. */
  Optional<Answer.Judged> fedAnew(Answer.Judged plan) {
    Attempt attempt = new Attempt(part(plan), judging);
    double[] point = attempt.pointOf(plan, budget());
    return point.length == 0 ? Optional.empty() : attempt.finish(point, rounds);
  }

  /** The deliveries of a plan, nothing moved. */
  private World part(Answer.Judged plan) {
    return judging.world().withSlots(plan.plan().slots()).withoutMoves();
  }

  /** What HiGHS finds near the packs of a plan (see {@link NearPacks}); empty where not better. */
  Optional<Answer.Judged> near(Answer.Judged plan) {
    return Attempt.near(plan, judging, budget(NEAR_MILLIS), () -> !goesOn());
  }

  /** Does some work, for a moment each time that it solves a program. */
  boolean briefly(BooleanSupplier work) {
    slice = BranchAndBound.MOMENT_MILLIS;
    boolean done = work.getAsBoolean();
    slice = ROUND_MILLIS;
    return done;
  }

  /** The whole world again and again, longer where that brings nothing new. */
  void searchOnAndOn() {
    for (int round = 0; round < rounds.orElse(Integer.MAX_VALUE) && goesOn(); round++) {
      double before = value();
      if (isSearched()) {
        return;
      }
      slice = value() < before ? ROUND_MILLIS : 2 * slice;
    }
  }

  /** Searches the whole world from the best plan; is nothing better left in it? */
  boolean isSearched() {
    return isSearched(search(judging.world(), best.plan()));
  }

  /** The same by HiGHS alone, for half of the time or a minute. */
  boolean isSearchedByHighs() {
    Attempt attempt = new Attempt(judging.world(), judging);
    Scip.Budget budget = budget(Math.max(MINUTE_MILLIS, millisLeft.getAsLong() / 2));
    Scip.Task task = Scip.Task.of(attempt.objective(), List.of(), false, budget);
    return isSearched(attempt.minimise(task, Highs::minimise, () -> !goesOn(), found));
  }

  private boolean isSearched(Attempt.Result result) {
    result
        .plan()
        .ifPresent(
            plan -> {
              found.accept(plan);
              double value = weights.of(plan.standing());
              best.proveBeside(plan.standing(), value - result.bound());
            });
    return result.finished();
  }

  private Attempt.Result search(World part, Optional<Answer.Judged> before) {
    Attempt attempt = new Attempt(part, judging);
    return before
        .map(plan -> attempt.pointOf(plan, budget()))
        .map(point -> goOn(attempt, point))
        .orElseGet(() -> dive(attempt, part));
  }

  /** Branch and bound goes on from a point. */
  private Attempt.Result goOn(Attempt attempt, double[] from) {
    Scip.Task task =
        new Scip.Task(attempt.objective(), List.of(), true, new double[0], from, budget(slice));
    Attempt.Result result = attempt.minimise(task, solver(), () -> !goesOn(), found);
    result.plan().ifPresent(found);
    return result;
  }

  /** Of many sets of deliveries the next is worth more than the rest of one: SCIP is soon done. */
  private BranchAndBound solver() {
    boolean many = judging.world().slots().size() > Bounding.FEW_SLOTS;
    return many ? (model, task, watched) -> Scip.minimise(model, task) : BranchAndBound::inTurn;
  }

  private Attempt.Result dive(Attempt attempt, World part) {
    double[] point = attempt.dive(toDiveIn(part, attempt), budget());
    double value = point.length > 0 ? attempt.objective().at(point) : Double.POSITIVE_INFINITY;
    if (point.length > 0 && best.plan().isEmpty()) {
      attempt.finishNear(point, rounds).ifPresent(found);
    }
    boolean loses = value > weights.ofAMeal();
    boolean isSmall = BranchAndBound.isSmall(attempt.program().model());
    losses += loses ? 1 : 0;
    largeLosses += loses && !isSmall ? 1 : 0;
    if (!isSmall) {
      return offered(value < value() ? attempt.finish(point, rounds) : Optional.empty());
    }
    if (loses && point.length > 0 && slice > BranchAndBound.MOMENT_MILLIS) {
      double[] polished = attempt.polish(point, budget(POLISH_MILLIS));
      return offered(attempt.finish(polished, rounds));
    }
    return goOn(attempt, point);
  }

  private Attempt.Result offered(Optional<Answer.Judged> plan) {
    plan.ifPresent(found);
    return new Attempt.Result(plan, Double.NEGATIVE_INFINITY, false);
  }

  private Program toDiveIn(World part, Attempt attempt) {
    if (attempt.program().model().columns().size() < FEW_COLUMNS) {
      return attempt.program();
    }
    int keptBack = KEPT_BACK[losses % KEPT_BACK.length];
    return Rules.program(new Sketch(keptBack, beyondFirst).of(part));
  }
}
