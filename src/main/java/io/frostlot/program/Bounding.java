package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.LongSupplier;

/**
 * Shows how good a plan can be at best, on the program of the whole world, or, where that is large,
 * first on relaxations of it; level by level: a level's least value by what no value can be below
 * (zero), by the linear relaxation, by branch and bound with what follows left real, with
 * everything whole; money by {@link Counting}, and, where that was not enough, by a solver's own
 * branch and bound. Plans met on the way are offered too.
 */
final class Bounding implements Runnable {
  private static final double WHOLE = 1e-5;

  /** To choose among equally good plans; more where proving took longer. */
  private static final long LEAST_TIES_MILLIS = 3000;

  static final int FEW_SLOTS = 60;
  private final World world;
  private final Best best;
  private final LongSupplier millisLeft;
  private final OptionalInt rounds;
  private final HeldLevels held = new HeldLevels();
  private final Raising raising;

  Bounding(World world, Best best, LongSupplier millisLeft, OptionalInt rounds) {
    this.world = world;
    this.best = best;
    this.millisLeft = millisLeft;
    this.rounds = rounds;
    raising = new Raising(best, held, rounds, this::millis, this::isOver);
  }

  @Override
  public void run() {
    long begun = millisLeft.getAsLong();
    prove();
    if (best.isProven()) {
      Answer.Judged proven = best.plan().orElseThrow();
      boolean exact = best.isProvenWithin(2 * Raising.exactness(proven));
      long took = begun - millisLeft.getAsLong();
      best.settle(new Ties(world, proven, best.apart(), forTies(took), rounds).choose(exact));
    }
  }

  /** The same without choosing among equally good plans. */
  void prove() {
    if (!isSmall(world) || world.keepers().size() > 1) {
      coarsely();
    }
    int apart = -1;
    while (goesOn() && best.apart().count() > apart) {
      apart = best.apart().count();
      exactly();
    }
  }

  /** No longer than it took to prove that there is nothing better, or a little. */
  private LongSupplier forTies(long took) {
    if (rounds.isPresent()) {
      return this::millis;
    }
    long until = millisLeft.getAsLong() - Math.max(LEAST_TIES_MILLIS, took);
    return () -> Math.min(millis(), millisLeft.getAsLong() - until);
  }

  /** Is the whole world one program that is soon searched? */
  static boolean isSmall(World world) {
    return world.slots().size() <= FEW_SLOTS
        && BranchAndBound.isSmall(Rules.program(world).model());
  }

  private Exact exact(World part) {
    return new Exact(part, new Judging(world, best.apart()), best::offer, rounds);
  }

  private boolean goesOn() {
    return millisLeft.getAsLong() > 0 && !best.isProven() && !best.isImpossible();
  }

  private boolean isOver() {
    return millisLeft.getAsLong() <= 0 || best.isImpossible() || best.isProvenBeside();
  }

  private void exactly() {
    Exact exact = exact(world);
    Attempt attempt = exact.attempt();
    held.clear();
    for (Level level : List.of(Level.UNMET_MUST, Level.UNMET_OTHER, Level.SHORTFALL)) {
      if (!hold(level, attempt)) {
        return;
      }
    }
    if (raising.count(exact) && goesOn()) {
      money(attempt);
    }
  }

  /** Bounds from relaxations only: {@link Coarse}, and for the shortfall {@link FirstWeeks}. */
  private void coarsely() {
    Coarse coarse = new Coarse(world, this::exact);
    Model model = coarse.program().model();
    if (world.scenario().policy().demand() == Policy.Demand.ALL && isImpossible(model)) {
      return;
    }
    for (Level level : List.of(Level.UNMET_MUST, Level.UNMET_OTHER)) {
      held.hold(level, reached(level, 0) ? 0 : relaxed(level, model));
    }
    held.hold(
        Level.SHORTFALL,
        reached(Level.SHORTFALL, 0) ? 0 : FirstWeeks.shortfall(world, held::rows, budget(4)));
    if (world.keepers().size() < 2 || !raising.cut(coarse.program())) {
      raising.count(coarse);
    }
  }

  private long millis() {
    return budget(1).milliseconds();
  }

  /** Where every meal is demanded there may be no plan: first coarsely, then exactly. */
  private boolean isImpossible(Model coarse) {
    for (Model model : List.of(coarse, Rules.program(world).model())) {
      if (best.plan().isPresent()) {
        return false;
      }
      Scip.Task task = Scip.Task.of(new Linear(), List.of(), true, budget(2));
      if (Scip.minimise(model, task).impossible()) {
        best.proveImpossible();
        return true;
      }
    }
    return false;
  }

  private double relaxed(Level level, Model model) {
    return Relaxation.minimise(
            model, model.objective(level), held.rows(model), millisLeft.getAsLong())
        .map(end -> Math.max(0, Math.ceil(end.bound() - WHOLE)))
        .orElse(0.0);
  }

  private boolean reached(Level level, double value) {
    return best.plan()
        .map(Answer.Judged::standing)
        .filter(held::areReachedBy)
        .filter(standing -> Best.level(standing, level) <= value)
        .isPresent();
  }

  /** Finds and holds what a level cannot be below; false where there is no plan at all. */
  private boolean hold(Level level, Attempt attempt) {
    Model model = attempt.program().model();
    Linear amount = model.objective(level);
    if (amount.terms().variables().length == 0) {
      held.hold(level, amount.constant());
      return true;
    }
    double least = reached(level, 0) ? 0 : relaxed(level, model);
    for (boolean relaxed : List.of(true, false)) {
      if (reached(level, least)) {
        break;
      }
      Attempt.Result result = solve(attempt, amount, relaxed, budget(2));
      if (result.impossible()) {
        return false;
      }
      least = Math.max(least, Math.ceil(result.bound() - WHOLE));
      if (!result.finished()) {
        break;
      }
    }
    held.hold(level, least);
    return true;
  }

  private Scip.Budget budget(int part) {
    return new Scip.Budget(
        rounds.isPresent() ? Long.MAX_VALUE / 1_000_000_000 : millisLeft.getAsLong() / part,
        rounds);
  }

  private void money(Attempt attempt) {
    Model model = attempt.program().model();
    Linear money = model.objective(Level.MONEY);
    int slices = rounds.isPresent() || BranchAndBound.isSmall(model) ? 1 : 3;
    for (int part = slices; part >= 1 && goesOn(); part--) {
      Attempt.Result result = solve(attempt, money, true, budget(part));
      best.prove(held.least(), result.bound());
      if (result.finished() && !best.isProven()) {
        // needed only where leaving real what follows made a difference
        best.prove(held.least(), solve(attempt, money, false, budget(1)).bound());
        return;
      }
    }
  }

  /** One solve of the whole, from the best plan on. */
  private Attempt.Result solve(
      Attempt attempt, Linear objective, boolean relaxed, Scip.Budget budget) {
    Model model = attempt.program().model();
    double[] hint =
        best.plan()
            .filter(plan -> !BranchAndBound.isSmall(model))
            .map(plan -> attempt.pointOf(plan, budget(1)))
            .orElse(new double[0]);
    Scip.Task task =
        new Scip.Task(objective, held.rows(model), relaxed, new double[0], hint, budget);
    Attempt.Result result =
        attempt.minimise(task, BranchAndBound::inTurn, () -> !goesOn(), best::offer);
    result.plan().ifPresent(best::offer);
    if (result.impossible()) {
      best.proveImpossible();
    }
    return result;
  }
}
