package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Moving;
import io.frostlot.plan.Order;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.LongSupplier;

/**
 * Finds plans: solves the program of one set of deliveries after another (see {@link OrderSets}),
 * the most promising next. A plan of a part of the world's deliveries is a plan of the whole.
 */
final class Improving implements Runnable {
  private static final long ROUND_MILLIS = 6000;
  private static final long POLISH_MILLIS = 3000;
  private static final long MINUTE_MILLIS = 60_000;
  private static final long LONG_MILLIS = 600_000;
  private static final int NEIGHBOURS = 12;
  private static final int MOST_LOOKS = 4;

  /** A dive in a program of fewer columns takes no time worth sparing. */
  private static final int FEW_COLUMNS = 3000;

  /** Branch and bound finds nothing in a program of more columns within a round. */
  private static final int MANY_COLUMNS = 5000;

  /** Percent of the freezers that sets are valued without, more with each meal lost to rounding. */
  private static final int KEPT_BACK_A_LOSS = 8;

  private static final int MOST_KEPT_BACK = 24;

  /** Percent of the freezers that dives keep back, in turn. */
  private static final int[] KEPT_BACK = {0, 10, 5, 15};

  private final World world;
  private final List<Slot> known;
  private final Best best;
  private final Judging judging;
  private final Weights weights;
  private final Beginnings beginnings;
  private final OrderSets sets;
  private final LongSupplier millisLeft;
  private final OptionalInt rounds;
  private int losses;

  /** How long branch and bound may take. */
  private long slice = ROUND_MILLIS;

  /**
   * A search that has not begun.
   *
   * @param known deliveries to look at first; may be empty
   */
  Improving(World world, List<Slot> known, Best best, LongSupplier millisLeft, OptionalInt rounds) {
    this.world = world;
    this.known = known;
    this.best = best;
    this.millisLeft = millisLeft;
    this.rounds = rounds;
    judging = new Judging(world, best.apart());
    weights = Weights.of(world);
    beginnings = new Beginnings(world);
    sets = new OrderSets(world, this::relaxed);
  }

  @Override
  public void run() {
    boolean small = isSmall();
    slice = small ? BranchAndBound.MOMENT_MILLIS : ROUND_MILLIS;
    if (beginnings.areParts()) {
      first();
    } else if (small && searchedAll(search(world, best.plan()))) {
      return;
    }
    slice = Math.max(MINUTE_MILLIS, millisLeft.getAsLong() / 2);
    if (small && searchedAll(wholly())) {
      return;
    }
    slice = ROUND_MILLIS;
    if (beginnings.areParts()) {
      if (losses > 0) {
        begin();
      }
      bySets();
    } else {
      wholeWorld();
    }
  }

  private void first() {
    sets.look(known);
    if (!known.isEmpty()) {
      solve(new TreeSet<>(known));
    }
    if (best.plan().isEmpty()) {
      begin();
    }
  }

  private void bySets() {
    beginnings
        .spread(new Coarse(world).program(), weights, budget(ROUND_MILLIS))
        .forEach(sets::look);
    int most = rounds.orElse(Integer.MAX_VALUE);
    for (int round = 0; round < most && goesOn(); round++) {
      int looks = 0;
      while (goesOn() && sets.expand(NEIGHBOURS) && looks < MOST_LOOKS) {
        looks++;
      }
      supplemented().or(() -> sets.nextToSolve(value())).ifPresent(this::solve);
    }
  }

  private void begin() {
    for (List<Slot> part : beginnings.parts()) {
      sets.look(new Greedy(world.withSlots(part)).deliveries());
    }
    sets.nextToSolve(value()).ifPresent(this::solve);
  }

  /** The best plan's deliveries and one more for a meal that it leaves unmet. */
  private Optional<SortedSet<Slot>> supplemented() {
    List<Set<Slot>> more =
        best.plan().map(plan -> new Supplements(world).of(plan)).orElse(List.of());
    more.forEach(sets::look);
    return sets.nextToSolve(more);
  }

  private boolean goesOn() {
    return millisLeft.getAsLong() > 0 && !best.isProven() && !best.isImpossible();
  }

  private void wholeWorld() {
    int most = rounds.orElse(Integer.MAX_VALUE);
    for (int round = 0; round < most && goesOn(); round++) {
      double before = value();
      if (searchedAll(search(world, best.plan()))) {
        return;
      }
      slice = value() < before ? ROUND_MILLIS : 2 * slice;
    }
  }

  /** Is the whole world one program that is soon searched? */
  private boolean isSmall() {
    return world.slots().size() <= Bounding.FEW_SLOTS
        && BranchAndBound.isSmall(Rules.program(world).model());
  }

  /** Searches the whole world as one program, which is small. */
  private Attempt.Result wholly() {
    Attempt attempt = new Attempt(world, judging);
    Linear objective = weights.objective(attempt.program().model());
    Attempt.Result result =
        attempt.minimise(
            Scip.Task.of(objective, List.of(), false, budget(slice)),
            Highs::minimise,
            () -> !goesOn(),
            this::offer);
    result.plan().ifPresent(this::offer);
    return result;
  }

  /** Is nothing better left in the whole world? */
  private boolean searchedAll(Attempt.Result result) {
    result
        .plan()
        .map(Answer.Judged::standing)
        .ifPresent(found -> best.proveBeside(found, weights.of(found) - result.bound()));
    return result.finished();
  }

  private double value() {
    return best.plan().map(plan -> weights.of(plan.standing())).orElse(Double.POSITIVE_INFINITY);
  }

  private void offer(Answer.Judged plan) {
    best.offer(plan);
    sets.look(plan.plan().orders().stream().map(Order::slot).toList());
  }

  private Scip.Budget budget(long slice) {
    long millis = rounds.isPresent() ? LONG_MILLIS : Math.min(slice, millisLeft.getAsLong());
    return new Scip.Budget(millis, rounds.isPresent() ? OptionalInt.of(1) : OptionalInt.empty());
  }

  /** The least that a set may come to when each of its orders is placed in a sketch. */
  private double relaxed(Collection<Slot> slots) {
    Sketch sketch = new Sketch(Math.min(MOST_KEPT_BACK, KEPT_BACK_A_LOSS * losses), true);
    Program program = Rules.program(sketch.of(world.withSlots(slots.stream().sorted().toList())));
    List<Model.Row> placed = new ArrayList<>();
    program
        .decisions()
        .orders()
        .values()
        .forEach(order -> placed.add(Model.extra(1, Linear.of(order.open()), 1)));
    Model model = program.model();
    return Relaxation.minimise(
            model, weights.objective(model), placed, budget(ROUND_MILLIS).milliseconds())
        .map(Relaxation.End::bound)
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** First as if nothing could be moved between freezers, which is a much smaller program. */
  private void solve(SortedSet<Slot> slots) {
    World part = world.withSlots(List.copyOf(slots));
    double before = value();
    Attempt.Result result = search(part.withoutMoves(), Optional.empty());
    if (value() < before && !new Moving(part).days().isEmpty()) {
      search(part, result.plan());
    }
    sets.solved(
        slots,
        result.plan().map(plan -> weights.of(plan.standing())).orElse(Double.POSITIVE_INFINITY));
  }

  /** Solves the program of a part, from a plan of it or from where a dive ends. */
  private Attempt.Result search(World part, Optional<Answer.Judged> before) {
    Attempt attempt = new Attempt(part, judging);
    Linear objective = weights.objective(attempt.program().model());
    return before
        .map(plan -> attempt.pointOf(plan, objective, budget(ROUND_MILLIS)))
        .map(point -> goOn(attempt, objective, point))
        .orElseGet(() -> dive(attempt, objective, part));
  }

  /** Branch and bound goes on from a point. */
  private Attempt.Result goOn(Attempt attempt, Linear objective, double[] from) {
    Scip.Task task = new Scip.Task(objective, List.of(), true, new double[0], from, budget(slice));
    Attempt.Result result =
        attempt.minimise(task, BranchAndBound::inTurn, () -> !goesOn(), this::offer);
    result.plan().ifPresent(this::offer);
    return result;
  }

  private Attempt.Result dive(Attempt attempt, Linear objective, World part) {
    double[] point = attempt.dive(toDiveIn(part, attempt), weights, budget(ROUND_MILLIS));
    double value = point.length > 0 ? objective.at(point) : Double.POSITIVE_INFINITY;
    if (point.length > 0 && best.plan().isEmpty()) {
      attempt.finishNear(objective, point, rounds).ifPresent(this::offer);
    }
    boolean loses = value > weights.ofAMeal();
    if (loses) {
      lost();
    }
    if (attempt.program().model().columns().size() > MANY_COLUMNS) {
      return offered(value < value() ? attempt.finish(objective, point, rounds) : Optional.empty());
    }
    if (loses && point.length > 0 && slice > BranchAndBound.MOMENT_MILLIS) {
      double[] polished = attempt.polish(objective, point, budget(POLISH_MILLIS));
      return offered(attempt.finish(objective, polished, rounds));
    }
    return goOn(attempt, objective, point);
  }

  private Attempt.Result offered(Optional<Answer.Judged> plan) {
    plan.ifPresent(this::offer);
    return new Attempt.Result(plan, Double.NEGATIVE_INFINITY, false);
  }

  private Program toDiveIn(World part, Attempt attempt) {
    if (attempt.program().model().columns().size() < FEW_COLUMNS) {
      return attempt.program();
    }
    int keptBack = KEPT_BACK[losses % KEPT_BACK.length];
    return Rules.program(new Sketch(keptBack, best.plan().isPresent()).of(part));
  }

  /** From then on sets are valued with more room kept back: all look different then. */
  private void lost() {
    losses++;
    if (KEPT_BACK_A_LOSS * losses <= MOST_KEPT_BACK) {
      sets.forgetUnsolved();
    }
  }
}
