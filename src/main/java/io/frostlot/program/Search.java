package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * One search: {@link Improving} and {@link Bounding} side by side, or one after the other where the
 * rounds of work are counted. Solvers cannot be interrupted: they work in threads of their own,
 * which are left behind when time is up or the watch says stop.
 */
final class Search {
  private static final long ASK_AFTER_MILLIS = 25;
  private final Kinds kinds;
  private final World world;
  private final List<Plan> known;
  private final Limits limits;
  private final Watch watch;
  private final Best best;
  private final long start = System.nanoTime();
  private volatile boolean over;
  private long told;
  private Optional<Answer.WithPlan> shown = Optional.empty();

  /** A search that knows nothing yet. */
  Search(World world, Limits limits, Watch watch) {
    this(world, List.of(), limits, watch);
  }

  /**
   * A search that has not begun.
   *
   * @param known plans of worlds that resemble this one
   */
  Search(World world, List<Plan> known, Limits limits, Watch watch) {
    kinds = Kinds.of(world);
    this.world = kinds.merged();
    this.known = known.stream().map(kinds::merge).toList();
    this.limits = limits;
    this.watch = watch;
    best = Best.in(this.world);
  }

  /** Empty where there is no plan; see {@link #isImpossible}. */
  Optional<Answer.WithPlan> run() {
    LongSupplier left = this::millisLeft;
    KnownPlans plans = new KnownPlans(world);
    plans.fitting(known).forEach(best::offer);
    Runnable improving = improving(plans.beginning(known), left);
    List<FutureTask<Boolean>> tasks = new ArrayList<>();
    if (limits.rounds().isPresent()) {
      tasks.add(
          start(
              () -> {
                improving.run();
                new Bounding(world, best, left, limits.rounds()).run();
              }));
    } else {
      tasks.add(start(improving));
      tasks.add(start(this::bound));
    }
    tell();
    while (!watch.stop()) {
      boolean ended = haveEnded(tasks);
      tell();
      if (ended) {
        break;
      }
      pause();
    }
    over = true;
    return shown.map(kinds::handedOut);
  }

  private Runnable improving(List<Slot> known, LongSupplier left) {
    return Joining.suits(world, known)
        ? new Joining(world, known, best, left, limits.rounds())
        : new Improving(world, known, best, left, limits.rounds());
  }

  /**
   * As long as that promises something, or there is no local search; then another search beside it.
   */
  private void bound() {
    FarBound far = new FarBound(best, System::nanoTime);
    boolean searches = world.joint().equals(Joint.ALONE) && TrialWorld.suits(world);
    LongSupplier left = () -> searches && far.isGivenUp() ? 0 : millisLeft();
    new Bounding(world, best, left, OptionalInt.empty()).run();
    if (searches && far.isGivenUp()) {
      secondSearch();
    }
  }

  private void secondSearch() {
    MiddlingSets sets = new MiddlingSets(world, best, this::millisLeft);
    if (sets.suits()) {
      sets.run();
    } else {
      RepackingTurns.second(world, best, this::millisLeft).alone(List.of());
    }
  }

  boolean isImpossible() {
    return best.isImpossible();
  }

  private boolean haveEnded(List<FutureTask<Boolean>> tasks) {
    boolean ended =
        tasks.stream().allMatch(FutureTask::isDone)
            || best.isSettled()
            || best.isImpossible()
            || millisLeft() <= 0;
    if (ended) {
      tasks.stream().filter(FutureTask::isDone).forEach(this::complain);
    }
    return ended;
  }

  /** A search that ends by a fault loses neither the plan in hand nor what the other one finds. */
  private void complain(FutureTask<Boolean> task) {
    try {
      task.get();
    } catch (ExecutionException e) {
      if (best.plan().isEmpty() && !best.isImpossible()) {
        throw new IllegalStateException("the search failed: " + e.getCause(), e.getCause());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static FutureTask<Boolean> start(Runnable work) {
    FutureTask<Boolean> task = new FutureTask<>(work, true);
    Thread thread = new Thread(task, "search");
    thread.setDaemon(true);
    thread.start();
    return task;
  }

  private void tell() {
    long news = best.news();
    if (news > told) {
      told = news;
      shown = best.answer();
      shown.ifPresent(watch::found);
    }
  }

  private static void pause() {
    try {
      TimeUnit.MILLISECONDS.sleep(ASK_AFTER_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Nothing once the search is over, so that threads left behind end after their slice. */
  private long millisLeft() {
    return over ? 0 : limits.millis() - TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
  }
}
