package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * What the engine is compared with: the same rules written down without thought, and SCIP with its
 * own settings. Every meal has variables of its own, one for each option and day on which it could
 * be eaten; stock of an item in a freezer is one balance for all its lots; the constants of on-off
 * rows are as large as all that is ever eaten; everything is whole; no row is added that would
 * strengthen it, nothing is searched for. Level by level, each to its proof; a level on which a
 * plan in hand reaches zero is passed over. Every plan is judged as those of the engine are.
 */
public final class Plain {
  private static final long SLICE_MILLIS = 500;
  private static final double WHOLE = 1e-5;
  private final Program program;
  private final WholePacks wholePacks;
  private final Judging judging;
  private final Best best;
  private final Limits limits;
  private final Watch watch;
  private final Map<Level, Double> held = new EnumMap<>(Level.class);
  private final long start = System.nanoTime();

  private Plain(World world, Limits limits, Watch watch) {
    this.limits = limits;
    this.watch = watch;
    program = Rules.program(world, Formulation.PLAIN);
    wholePacks = new WholePacks(world);
    judging = new Judging(world, new Apart());
    best = Best.in(world);
  }

  /** The best answer within the limits, or up to the time the watch says stop. */
  public static Answer solve(World world, Limits limits, Watch watch) {
    Plain plain = new Plain(world, limits, watch);
    plain.levels();
    Optional<Answer.WithPlan> answer = plain.best.answer();
    if (answer.isPresent()) {
      return answer.get();
    }
    return plain.best.isImpossible()
        ? new Answer.Impossible(List.of("The rules together."), false)
        : new Answer.NothingFound();
  }

  private void levels() {
    for (Level level : Level.values()) {
      if (level != Level.MONEY && isZero(level)) {
        held.put(level, 0.0);
      } else if (!minimise(level)) {
        return;
      }
    }
  }

  private boolean isZero(Level level) {
    Linear amount = program.model().objective(level);
    return amount.hasNoTerms()
        || best.plan()
            .filter(
                plan ->
                    held.entrySet().stream()
                        .allMatch(e -> Best.level(plan.standing(), e.getKey()) == e.getValue()))
            .filter(plan -> Best.level(plan.standing(), level) == 0)
            .isPresent();
  }

  /** Proves the least value of a level and holds it; false where it stays open. */
  private boolean minimise(Level level) {
    boolean mended = true;
    while (mended) {
      Scip.End end = run(level);
      if (!end.finished() || !end.found()) {
        if (end.impossible()) {
          best.proveImpossible();
        }
        return false;
      }
      mended = wholePacks.cut(program, end.point());
      if (!mended) {
        held.put(level, Math.max(0, Math.ceil(end.bound() - WHOLE)));
      }
    }
    return true;
  }

  private Scip.End run(Level level) {
    Scip.End end = Scip.End.nothing();
    Linear amount = program.model().objective(level);
    try (Slices slices = new Slices(program.model(), task(amount))) {
      double value = Double.POSITIVE_INFINITY;
      while (!end.finished() && millisLeft() > 0 && !watch.stop()) {
        end = slices.goOn(Math.min(SLICE_MILLIS, millisLeft()));
        if (end.found() && amount.at(end.point()) < value - WHOLE) {
          value = amount.at(end.point());
          offer(end.point());
        }
        if (level == Level.MONEY) {
          best.prove(held, end.bound());
        }
        best.answer().ifPresent(watch::found);
      }
    }
    return end;
  }

  private void offer(double[] point) {
    if (wholePacks.withinMostBoxes(program, point)) {
      judging.judge(program, point).ifPresent(best::offer);
    }
  }

  private Scip.Task task(Linear amount) {
    List<Model.Row> rows = new ArrayList<>();
    held.forEach(
        (level, most) ->
            rows.add(Model.extra(-Model.INFINITY, program.model().objective(level), most + WHOLE)));
    return Scip.Task.of(amount, rows, false, Scip.Budget.ofMillis(limits.millis()));
  }

  private long millisLeft() {
    return limits.millis() - TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
  }
}
