package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * One search, level by level. The solver cannot be interrupted: it works in a thread of its own,
 * which is left behind when the watch says stop. Money is looked at twice where there is time, so
 * that there is a plan to show early; the second look begins with it.
 */
final class Search {
  private static final long FIRST_LOOK_MILLIS = 3000;
  private static final long ASK_AFTER_MILLIS = 50;
  private static final double WHOLE = 1e-6;
  private final Program program;
  private final Limits limits;
  private final Watch watch;
  private final Shown shown;
  private final long start = System.nanoTime();
  private final WholePacks wholePacks;
  private final Map<Level, Double> held = new EnumMap<>(Level.class);
  private double[] point = new double[0];
  private boolean proven = true;
  private boolean impossible;
  private Optional<Answer.WithPlan> best = Optional.empty();

  /** Makes a plan of a point, judged and checked. */
  interface Shown {
    Answer.WithPlan answer(Program program, double[] point, OptionalDouble bound);
  }

  Search(World world, Limits limits, Watch watch, Shown shown) {
    this.program = Rules.program(world);
    this.wholePacks = new WholePacks(world);
    this.limits = limits;
    this.watch = watch;
    this.shown = shown;
  }

  /** Empty where there is no plan; see {@link #isImpossible}. */
  Optional<Answer.WithPlan> run() {
    for (Level level : Level.values()) {
      boolean more = level == Level.MONEY ? money() : before(level);
      if (!more) {
        break;
      }
    }
    return best;
  }

  boolean isImpossible() {
    return impossible;
  }

  /** A level before money; false where the search ends with it. */
  private boolean before(Level level) {
    Optional<Scip.End> end = look(level, left());
    while (end.filter(Scip.End::found).isPresent() && wholePacks.cut(program, end.get().point())) {
      end = look(level, left());
    }
    impossible = end.filter(Scip.End::impossible).isPresent() && best.isEmpty();
    if (end.filter(Scip.End::found).isEmpty()) {
      return false;
    }
    point = end.get().point();
    double value = Math.rint(program.model().objective(level).at(point));
    proven &= end.get().bound() > value - 1 + WHOLE;
    held.put(level, value);
    take(shown.answer(program, point, OptionalDouble.empty()));
    return true;
  }

  private boolean money() {
    boolean twice = limits.rounds().isEmpty() && left() > 2 * FIRST_LOOK_MILLIS;
    if (twice && !moneyWithin(FIRST_LOOK_MILLIS)) {
      return false;
    }
    return best.filter(Answer.Proven.class::isInstance).isEmpty() && moneyWithin(left());
  }

  private boolean moneyWithin(long milliseconds) {
    long until = left() - milliseconds;
    while (true) {
      Optional<Scip.End> end = look(Level.MONEY, left() - until);
      if (end.filter(Scip.End::found).isEmpty()) {
        return end.isPresent();
      }
      point = end.get().point();
      boolean mended = wholePacks.cut(program, point);
      if (wholePacks.withinMostBoxes(program, point)) {
        OptionalDouble bound =
            proven ? OptionalDouble.of(end.get().bound()) : OptionalDouble.empty();
        take(shown.answer(program, point, bound));
      }
      if (!mended) {
        return true;
      }
    }
  }

  /** The better plan, and the better bound. */
  private void take(Answer.WithPlan found) {
    Answer.WithPlan before = best.orElse(found);
    boolean better = found.plan().standing().compareTo(before.plan().standing()) <= 0;
    Answer.WithPlan now = better ? found : before;
    if (!(now instanceof Answer.Proven)) {
      OptionalDouble bound = higher(before.bound(), found.bound());
      now = new Answer.BestFound(now.plan(), bound);
    }
    best = Optional.of(now);
    watch.found(now);
  }

  private static OptionalDouble higher(OptionalDouble a, OptionalDouble b) {
    return a.isPresent() && b.isPresent()
        ? OptionalDouble.of(Math.max(a.getAsDouble(), b.getAsDouble()))
        : a.isPresent() ? a : b;
  }

  private long left() {
    return limits.millis() - TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
  }

  /** Empty where the watch said stop. */
  private Optional<Scip.End> look(Level level, long milliseconds) {
    Scip.Task task =
        new Scip.Task(
            level,
            held,
            point,
            new Limits(Duration.ofMillis(Math.max(1, milliseconds)), limits.rounds()));
    CompletableFuture<Scip.End> end = new CompletableFuture<>();
    Thread thread = new Thread(() -> end.complete(Scip.minimise(program.model(), task)), "solver");
    thread.setDaemon(true);
    thread.setUncaughtExceptionHandler((dead, thrown) -> end.completeExceptionally(thrown));
    thread.start();
    while (!watch.stop()) {
      try {
        return Optional.of(end.get(ASK_AFTER_MILLIS, TimeUnit.MILLISECONDS));
      } catch (TimeoutException e) {
        // not at its end yet: ask the watch again
      } catch (ExecutionException e) {
        throw new IllegalStateException("the solver failed: " + e.getCause(), e.getCause());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return Optional.empty();
      }
    }
    return Optional.empty();
  }
}
