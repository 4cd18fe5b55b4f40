package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.LongSupplier;

/**
 * Which of several equally good plans to show, so that a proven answer is the same every time: the
 * one with the fewest orders, then with the latest arrivals, then with the packs that a fixed
 * weighting of all rows of all price sheets puts first; its feedings follow from its packs.
 */
final class Ties {
  private static final double WITHIN = 1e-6;
  private static final double LEAST_DIFFERENCE = 1e-4;

  /** The golden section, whose multiples are spread evenly over [0, 1) and never repeat. */
  private static final double SECTION = (Math.sqrt(5) - 1) / 2;

  private final Attempt attempt;
  private final Program program;
  private final LongSupplier millisLeft;
  private final OptionalInt rounds;
  private final List<Model.Row> held = new ArrayList<>();
  private final Counts counts;
  private Answer.Judged chosen;

  /**
   * To choose among the plans that are as good as a proven one.
   *
   * @param rounds of work on each of three choices, as in {@link Limits}
   */
  Ties(
      World world, Answer.Judged proven, Apart apart, LongSupplier millisLeft, OptionalInt rounds) {
    this.millisLeft = millisLeft;
    this.rounds = rounds;
    attempt = new Attempt(world, new Judging(world, apart));
    program = attempt.program();
    chosen = proven;
    new CoverRows(program).add();
    counts = new Counts(program);
    List.of(Level.UNMET_MUST, Level.UNMET_OTHER, Level.SHORTFALL).forEach(this::hold);
  }

  private void hold(Level level) {
    double most = Best.level(chosen.standing(), level) + WITHIN;
    held.add(Model.extra(-Model.INFINITY, program.model().objective(level), most));
  }

  /**
   * The plan to show; the one begun with where time is too short.
   *
   * @param exact is it known that none costs less, by whatever fraction of a minor unit?
   */
  Answer.Judged choose(boolean exact) {
    Linear dates = new Linear();
    Linear packs = new Linear();
    int last = program.decisions().timeline().last() + 1;
    double perOrder = last * (double) Math.max(1, program.decisions().orders().size());
    int row = 0;
    for (OrderDecisions order : program.decisions().orders().values()) {
      dates.plus(perOrder + last - Timeline.day(order.slot().arrivesLatest()), order.open());
      for (OrderDecisions.PackDecision pack : order.packs().values()) {
        packs.plus(1 + ++row * SECTION % 1, pack.count());
      }
    }
    if (leastMoney(exact) && least(dates, 1) && least(packs, LEAST_DIFFERENCE)) {
      Optional.of(attempt.pointOf(chosen, budget()))
          .filter(point -> point.length > 0)
          .flatMap(this::finished)
          .filter(plan -> plan.standing().equals(chosen.standing()))
          .ifPresent(plan -> chosen = plan);
    }
    return chosen;
  }

  /** Proven is to half a minor unit: of what is left, the least. False where time was too short. */
  private boolean leastMoney(boolean exact) {
    Linear money = program.model().objective(Level.MONEY);
    Consumer<double[]> whole =
        point ->
            finished(point)
                .filter(plan -> plan.standing().compareTo(chosen.standing()) < 0)
                .ifPresent(plan -> chosen = plan);
    boolean finished =
        exact || count(money, () -> chosen.standing().money().toDouble() - LEAST_DIFFERENCE, whole);
    hold(Level.MONEY);
    return finished;
  }

  /** By counts, and what a moment of that does not settle in a small program by HiGHS. */
  private boolean count(Linear amount, DoubleSupplier cutoff, Consumer<double[]> whole) {
    boolean small = BranchAndBound.isSmall(program.model());
    long end = millisLeft.getAsLong() - (small ? BranchAndBound.MOMENT_MILLIS : Long.MAX_VALUE);
    Simplex simplex = new Simplex(program.model(), amount, held, millisLeft);
    try (Counting counting = new Counting(Part.undivided(counts, simplex, whole), cutoff, 0)) {
      BooleanSupplier stop = () -> millisLeft.getAsLong() < Math.max(1, end);
      return counting.run(Scip.nodes(rounds), stop, bound -> {})
          || (small && search(amount, cutoff, whole));
    }
  }

  private boolean search(Linear amount, DoubleSupplier cutoff, Consumer<double[]> whole) {
    List<Model.Row> rows = new ArrayList<>(held);
    rows.add(Model.extra(-Model.INFINITY, amount, cutoff.getAsDouble()));
    Scip.End end =
        Highs.minimise(
            program.model(),
            Scip.Task.of(amount, rows, false, budget()),
            new BranchAndBound.Watched(() -> millisLeft.getAsLong() < 1, whole));
    if (end.found()) {
      whole.accept(end.point());
    }
    return end.finished();
  }

  /** Finds and holds the least of an amount; false where time was too short. */
  private boolean least(Linear amount, double step) {
    double[] value = {amount.at(pointOf(chosen))};
    Consumer<double[]> whole =
        point ->
            finished(point)
                .filter(plan -> plan.standing().equals(chosen.standing()))
                .filter(plan -> amount.at(pointOf(plan)) < value[0])
                .ifPresent(
                    plan -> {
                      chosen = plan;
                      value[0] = amount.at(pointOf(plan));
                    });
    boolean finished = count(amount, () -> value[0] - step / 2, whole);
    held.add(Model.extra(-Model.INFINITY, amount, value[0] + step / 4));
    return finished;
  }

  private Optional<Answer.Judged> finished(double[] point) {
    return attempt.finish(point, rounds);
  }

  private Scip.Budget budget() {
    return Scip.Budget.of(millisLeft.getAsLong(), rounds);
  }

  /** Only the orders and packs of a plan, all else zero. */
  private double[] pointOf(Answer.Judged judged) {
    double[] point = new double[program.model().columns().size()];
    Map<Slot, Map<Pack, Integer>> bought = judged.plan().packs();
    for (OrderDecisions order : program.decisions().orders().values()) {
      Map<Pack, Integer> packs = bought.getOrDefault(order.slot(), Map.of());
      point[order.open().index()] = packs.isEmpty() ? 0 : 1;
      order
          .packs()
          .forEach(
              (pack, decision) -> point[decision.count().index()] = packs.getOrDefault(pack, 0));
    }
    return point;
  }
}
