package io.frostlot.program;

import io.frostlot.plan.Answer;
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
import java.util.stream.Stream;

/**
 * One solve of the program, of the whole world or of a part of its slots: first with what follows
 * left real, then, packs held, with everything whole.
 */
final class Attempt {
  private static final long FINISH_MILLIS = 4000;
  private static final long LONG_MILLIS = 600_000;
  private static final int MOST_MENDS = 5;
  private static final double WHOLE = 1e-6;
  private final Program program;
  private final WholePacks wholePacks;
  private final Judging judging;
  private final boolean guided;

  Attempt(World world, Judging judging) {
    program = Rules.program(world, Formulation.USUAL.withApart(judging.apart().animals()));
    wholePacks = new WholePacks(judging.world());
    this.judging = judging;
    guided = Adequacy.isRelaxed(judging.world());
  }

  Program program() {
    return program;
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
    /** No solution of the task. */
    boolean impossible() {
      return plan.isEmpty() && bound == Double.POSITIVE_INFINITY;
    }
  }

  /** Does a task on this program, and again with boxes that its solution shows to be missing. */
  Result minimise(Scip.Task task) {
    Scip.Budget budget = task.budget();
    long end = System.nanoTime() + budget.milliseconds() * 1_000_000;
    double bound = Double.NEGATIVE_INFINITY;
    Optional<Answer.Judged> best = Optional.empty();
    boolean finished = false;
    for (int mend = 0; mend < MOST_MENDS; mend++) {
      long left = (end - System.nanoTime()) / 1_000_000;
      Scip.End run =
          Scip.minimise(program.model(), task.within(new Scip.Budget(left, budget.rounds())));
      bound = Math.max(bound, run.impossible() ? Double.POSITIVE_INFINITY : run.bound());
      finished = run.finished();
      if (!run.found()) {
        return new Result(best, bound, finished);
      }
      boolean mended = wholePacks.cut(program, run.point());
      Optional<Answer.Judged> found = finish(task.objective(), run.point(), budget.rounds());
      best = better(best, found);
      if (!mended) {
        break;
      }
      finished = false;
    }
    return new Result(best, bound, finished);
  }

  private static Optional<Answer.Judged> better(
      Optional<Answer.Judged> a, Optional<Answer.Judged> b) {
    return Stream.of(a, b)
        .flatMap(Optional::stream)
        .min(Comparator.comparing(Answer.Judged::standing));
  }

  /** Holds packs, boxes and the like, and settles what follows from them. */
  Optional<Answer.Judged> finish(Linear objective, double[] found, OptionalInt rounds) {
    if (!wholePacks.withinMostBoxes(program, found)) {
      return Optional.empty();
    }
    double[] point = found;
    if (!isWhole(point)) {
      double[] fixed = new double[found.length];
      for (int i = 0; i < fixed.length; i++) {
        boolean hold = program.model().columns().get(i).kind() == Model.Kind.WHOLE;
        fixed[i] = hold ? Math.rint(found[i]) : Double.NaN;
      }
      program
          .decisions()
          .orders()
          .values()
          .forEach(order -> fixed[order.boxes().index()] = Double.NaN);
      Scip.Budget budget =
          new Scip.Budget(rounds.isPresent() ? LONG_MILLIS : FINISH_MILLIS, rounds);
      Scip.End run =
          guided
              ? new Guided(program, found).finish(objective, fixed, budget)
              : Scip.minimise(
                  program.model(),
                  new Scip.Task(objective, List.of(), false, fixed, new double[0], budget));
      if (!run.found()) {
        return Optional.empty();
      }
      point = run.point();
    }
    return Optional.of(judging.judge(program, point));
  }

  /**
   * The plan of a proposal, and what of it can be had: its packs held, or, where they do not fit or
   * break an order's terms, as most.
   */
  Optional<Answer.Judged> propose(
      Linear objective, Map<Slot, Map<Pack, Integer>> packs, Scip.Budget budget) {
    double[] held = held(packs);
    Scip.Task task = new Scip.Task(objective, List.of(), true, held, new double[0], budget);
    Scip.End run = Scip.minimise(program.model(), task);
    if (!run.found()) {
      List<Model.Row> most = new ArrayList<>();
      for (int i = 0; i < held.length; i++) {
        if (!Double.isNaN(held[i])) {
          most.add(Model.extra(-Model.INFINITY, Linear.of(new Var(i)), held[i]));
        }
      }
      run = Scip.minimise(program.model(), Scip.Task.of(objective, most, true, budget));
    }
    return run.found() ? finish(objective, run.point(), budget.rounds()) : Optional.empty();
  }

  private boolean isWhole(double[] point) {
    for (int i = 0; i < point.length; i++) {
      boolean follows = program.model().columns().get(i).kind() == Model.Kind.FOLLOWS;
      if (follows && Math.abs(point[i] - Math.rint(point[i])) > WHOLE) {
        return false;
      }
    }
    return true;
  }

  /**
   * A point of the program that repeats the orders of a plan, as far as they are in this part of
   * the world; empty where none was found.
   */
  double[] pointOf(Answer.Judged judged, Linear objective, Scip.Budget budget) {
    double[] held = held(judged.plan().packs());
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
