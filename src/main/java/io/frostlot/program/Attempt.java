package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * One solve of the program, of the whole world or of a part of its slots: first with what follows
 * left real, then, packs held, with everything whole.
 */
final class Attempt {
  private static final int MOST_MENDS = 5;

  /** Money that is worth another look. */
  private static final double LEAST_GAIN = 0.01;

  private final Program program;
  private final WholePacks wholePacks;
  private final Finishing finishing;
  private final Weights weights;
  private final Linear objective;

  Attempt(World world, Judging judging) {
    this(world, judging, Formulation.of(Grain.DAYS.fit(world)));
  }

  private Attempt(World world, Judging judging, Formulation formulation) {
    program = Rules.program(world, formulation.withApart(judging.apart().animals()));
    wholePacks = new WholePacks(judging.world());
    weights = Weights.of(judging.world());
    objective = weights.objective(program.model());
    finishing = new Finishing(program, objective, wholePacks, judging);
  }

  Program program() {
    return program;
  }

  /** What a plan weighs, levels before money and all. */
  Linear objective() {
    return objective;
  }

  /**
   * The result of an attempt.
   *
   * @param plan judged, where one was found
   * @param bound of the objective over this part of the world
   * @param finished nothing better is in this part of the world, what follows left real where the
   *     task says so
   */
  record Result(Optional<Answer.Judged> plan, double bound, boolean finished) {
    /** Is no plan of this part of the world better by more than a share of its money? */
    boolean isBestWithin(double share) {
      return finished
          && plan.map(Answer.Judged::standing).filter(it -> isNear(it, share)).isPresent();
    }

    private boolean isNear(Standing standing, double share) {
      double money = standing.money().toDouble();
      return standing.lacksNothing() && money - bound < share * money;
    }

    /** No solution of the task. */
    boolean impossible() {
      return plan.isEmpty() && bound == Double.POSITIVE_INFINITY;
    }
  }

  /**
   * Does a task on this program, and again with boxes that its solution shows to be missing.
   *
   * @param stop asked whether to end
   * @param better told of plans on the way
   */
  Result minimise(
      Scip.Task task, BranchAndBound solver, BooleanSupplier stop, Consumer<Answer.Judged> better) {
    Scip.Budget budget = task.budget();
    BranchAndBound.Watched watched =
        new BranchAndBound.Watched(stop, point -> finish(point, budget.rounds()).ifPresent(better));
    long end = System.nanoTime() + budget.milliseconds() * 1_000_000;
    double bound = Double.NEGATIVE_INFINITY;
    Optional<Answer.Judged> best = Optional.empty();
    boolean finished = false;
    for (int mend = 0; mend < MOST_MENDS; mend++) {
      long left = (end - System.nanoTime()) / 1_000_000;
      Scip.End run =
          solver.minimise(
              program.model(), task.within(new Scip.Budget(left, budget.rounds())), watched);
      bound = Math.max(bound, run.impossible() ? Double.POSITIVE_INFINITY : run.bound());
      finished = run.finished();
      if (!run.found()) {
        return new Result(best, bound, finished);
      }
      boolean mended = wholePacks.cut(program, run.point());
      Optional<Answer.Judged> found = finish(run.point(), budget.rounds());
      best = better(best, found);
      if (!mended) {
        break;
      }
      finished = false;
    }
    return new Result(best, bound, finished);
  }

  /**
   * The best of what lies near a plan's packs (see {@link NearPacks}), as far as HiGHS finds it;
   * empty where it finds nothing better, or the program is not a small one.
   */
  static Optional<Answer.Judged> near(
      Answer.Judged plan, Judging judging, Scip.Budget budget, BooleanSupplier stop) {
    NearPacks packs = NearPacks.of(plan, judging.world());
    World world = judging.world().withSlots(packs.slots()).withoutMoves();
    Attempt attempt =
        new Attempt(world, judging, Formulation.of(Grain.DAYS.fit(world)).near(packs));
    if (!BranchAndBound.isSmall(attempt.program.model())) {
      return Optional.empty();
    }
    double most = attempt.weights.of(plan.standing()) - LEAST_GAIN;
    List<Model.Row> rows = packs.least(attempt.program);
    rows.add(Model.extra(-Model.INFINITY, attempt.objective, most));
    Scip.End end =
        Highs.minimise(
            attempt.program.model(),
            Scip.Task.of(attempt.objective, rows, false, budget),
            new BranchAndBound.Watched(stop, point -> {}));
    return end.found() ? attempt.finish(end.point(), budget.rounds()) : Optional.empty();
  }

  private static Optional<Answer.Judged> better(
      Optional<Answer.Judged> a, Optional<Answer.Judged> b) {
    return Stream.of(a, b)
        .flatMap(Optional::stream)
        .min(Comparator.comparing(Answer.Judged::standing));
  }

  /** Holds packs, boxes and the like, and settles what follows from them. */
  Optional<Answer.Judged> finish(double[] found, OptionalInt rounds) {
    return finishing.finish(found, rounds, true);
  }

  /** The same, each choice next to its value only: soon done. */
  Optional<Answer.Judged> finishNear(double[] found, OptionalInt rounds) {
    return finishing.finish(found, rounds, false);
  }

  /** A point at least as good as another, with at most one pack of each row more or less. */
  double[] polish(double[] point, Scip.Budget budget) {
    List<Model.Row> beside = new ArrayList<>();
    for (OrderDecisions order : program.decisions().orders().values()) {
      for (OrderDecisions.PackDecision pack : order.packs().values()) {
        double packs = Math.rint(point[pack.count().index()]);
        beside.add(Model.extra(packs - 1, Linear.of(pack.count()), packs + 1));
      }
    }
    Scip.Task task = new Scip.Task(objective, beside, true, new double[0], point, budget);
    Scip.End run = Scip.minimise(program.model(), task);
    return run.found() ? run.point() : point;
  }

  /**
   * A point with whole packs from a dive, what follows left real; empty where none was found.
   *
   * @param simple a program of the same deliveries to dive in: this one, or that of a {@link
   *     Sketch}
   */
  double[] dive(Program simple, Scip.Budget budget) {
    long end = System.nanoTime() + budget.milliseconds() * 1_000_000;
    return new Diving(
            simple,
            weights.objective(simple.model()),
            weights.ofAMeal() / 2,
            () -> (end - System.nanoTime()) / 1_000_000)
        .dive()
        .map(point -> pointOf(simple.decisions().packs(point), budget))
        .orElse(new double[0]);
  }

  /**
   * A point of the program that repeats the orders of a plan, as far as they are in this part of
   * the world; empty where none was found.
   */
  double[] pointOf(Answer.Judged judged, Scip.Budget budget) {
    return pointOf(judged.plan().packs(), budget);
  }

  /** The same of packs; each at most what the program allows. */
  double[] pointOf(Map<Slot, Map<Pack, Integer>> packs, Scip.Budget budget) {
    double[] held = held(packs);
    return Scip.minimise(
            program.model(), new Scip.Task(objective, List.of(), true, held, new double[0], budget))
        .point();
  }

  /** Values of the pack columns, all others free. */
  private double[] held(Map<Slot, Map<Pack, Integer>> packs) {
    double[] held = new double[program.model().columns().size()];
    Arrays.fill(held, Double.NaN);
    program
        .decisions()
        .orders()
        .values()
        .forEach(
            order ->
                order
                    .packs()
                    .forEach(
                        (pack, decision) ->
                            held[decision.count().index()] =
                                Math.min(
                                    packs
                                        .getOrDefault(order.slot(), Map.of())
                                        .getOrDefault(pack, 0),
                                    program.model().column(decision.count()).most())));
    return held;
  }
}
