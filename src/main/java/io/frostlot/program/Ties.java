package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Order;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import java.util.function.ToDoubleFunction;

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
  private final Weights weights;
  private final LongSupplier millisLeft;
  private final List<Model.Row> held = new ArrayList<>();
  private final Counts counts;
  private Answer.Judged chosen;

  /** To choose among the plans that are as good as a proven one. */
  Ties(World world, Answer.Judged proven, Apart apart, LongSupplier millisLeft) {
    this.millisLeft = millisLeft;
    attempt = new Attempt(world, new Judging(world, apart));
    program = attempt.program();
    weights = Weights.of(world);
    chosen = proven;
    new CoverRows(program).add();
    counts = new Counts(program);
    for (Level level : Level.values()) {
      double most = Best.level(proven.standing(), level) + WITHIN;
      held.add(Model.extra(-Model.INFINITY, program.model().objective(level), most));
    }
  }

  /** The plan to show; the one begun with where time is too short. */
  Answer.Judged choose() {
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
    if (least(dates, 1) && least(packs, LEAST_DIFFERENCE)) {
      attempt
          .propose(weights.objective(program.model()), packsOf(chosen), budget())
          .filter(plan -> plan.standing().equals(chosen.standing()))
          .ifPresent(plan -> chosen = plan);
    }
    return chosen;
  }

  /** Finds and holds the least of an amount; false where time was too short. */
  private boolean least(Linear amount, double step) {
    ToDoubleFunction<Answer.Judged> value = plan -> amount.at(pointOf(plan));
    BooleanSupplier late = () -> millisLeft.getAsLong() < 1;
    Counting.Progress progress =
        new Counting.Progress(
            bound -> {},
            point ->
                attempt
                    .finish(weights.objective(program.model()), point, OptionalInt.empty())
                    .filter(plan -> plan.standing().equals(chosen.standing()))
                    .filter(plan -> value.applyAsDouble(plan) < value.applyAsDouble(chosen))
                    .ifPresent(plan -> chosen = plan));
    boolean finished;
    try (Simplex simplex = new Simplex(program.model(), amount, held, millisLeft)) {
      finished =
          new Counting(simplex, counts, () -> value.applyAsDouble(chosen) - step / 2)
              .run(Integer.MAX_VALUE, late, progress);
    }
    double most = value.applyAsDouble(chosen) + step / 4;
    held.add(Model.extra(-Model.INFINITY, amount, most));
    return finished;
  }

  private Scip.Budget budget() {
    return new Scip.Budget(millisLeft.getAsLong(), OptionalInt.empty());
  }

  /** Only the orders and packs of a plan, all else zero. */
  private double[] pointOf(Answer.Judged judged) {
    double[] point = new double[program.model().columns().size()];
    packsOf(judged)
        .forEach(
            (slot, packs) -> {
              OrderDecisions order = program.decisions().orders().get(slot);
              point[order.open().index()] = 1;
              packs.forEach((pack, n) -> point[order.packs().get(pack).count().index()] = n);
            });
    return point;
  }

  private static Map<Slot, Map<Pack, Integer>> packsOf(Answer.Judged judged) {
    Map<Slot, Map<Pack, Integer>> packs = new HashMap<>();
    for (Order order : judged.plan().orders()) {
      Map<Pack, Integer> counts = packs.computeIfAbsent(order.slot(), slot -> new HashMap<>());
      order.lines().forEach(line -> counts.merge(line.pack(), line.packs(), Integer::sum));
    }
    return packs;
  }
}
