package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Group;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Order;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.sharing.Subgroup;
import io.frostlot.supply.Slot;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/**
 * Looks for members' own plans, side by side: a search seldom keeps two cores busy. Each is looked
 * for until it is known well; what is left of its time is for those after it.
 */
final class OwnPlans {
  private static final int NEAR_DAYS = 3;
  private final Group group;
  private final SubgroupPlans plans;
  private final Limits limits;
  private final ShareBox.Progress progress;
  private final AtomicInteger begun = new AtomicInteger();
  private final AtomicInteger done = new AtomicInteger();
  private volatile boolean failed;

  OwnPlans(Group group, SubgroupPlans plans, Limits limits, ShareBox.Progress progress) {
    this.group = group;
    this.plans = plans;
    this.limits = limits;
    this.progress = progress;
  }

  /**
   * A plan of every member; false where one has none.
   *
   * @param time for all, unless it takes longer to find any plan
   */
  boolean find(Duration time) {
    long end = System.nanoTime() + time.toNanos();
    List<Integer> members = plans.all().members();
    sideBySide(
        members,
        member -> {
          Duration each = part(end, members.size());
          if (failed) {
            return;
          }
          Answer known = plans.solve(Subgroup.of(member), limits, patience(each));
          if (!(known instanceof Answer.WithPlan)) {
            fail(member, known);
          }
          progress.alone(done.incrementAndGet(), members.size());
        });
    return !failed && plans.knowAlone();
  }

  /** The first that has none says why; the others are stopped then. */
  private synchronized void fail(int member, Answer none) {
    if (!failed) {
      failed = true;
      progress.without(group.names().get(member), none);
    }
  }

  /**
   * Better plans of those whose own is not known well: most of the time with deliveries like those
   * of the joint plan, which are few and good. Not where rounds are counted.
   */
  void improve(Optional<Answer.WithPlan> joint, Duration time) {
    long end = System.nanoTime() + time.toNanos();
    List<Integer> members = plans.all().members().stream().filter(this::isVague).toList();
    if (limits.rounds().isPresent()) {
      return;
    }
    begun.set(0);
    sideBySide(
        members,
        member -> {
          Duration each = part(end, members.size());
          long until = System.nanoTime() + each.toNanos();
          List<Slot> few = like(member, joint);
          if (!few.isEmpty()) {
            plans.solveAlone(member, few, of(each.multipliedBy(2).dividedBy(3)), watch());
          }
          Duration left = Duration.ofNanos(until - System.nanoTime());
          if (!left.isNegative() && !left.isZero() && isVague(member)) {
            plans.solve(Subgroup.of(member), of(left), patience(left));
          }
        });
  }

  private boolean isVague(int member) {
    return !plans.plan(Subgroup.of(member)).map(it -> ShareBox.isNear(it, limits)).orElse(false);
  }

  /**
   * An equal part of what is left for those not begun yet, of whom so many are looked at at once.
   */
  private Duration part(long end, int members) {
    int waiting = members - begun.getAndIncrement();
    long left = Math.max(1_000_000, end - System.nanoTime());
    return Duration.ofNanos(left * Math.min(waiting, side()) / waiting);
  }

  private List<Slot> like(int member, Optional<Answer.WithPlan> joint) {
    Keeper keeper = group.keepers().get(member);
    List<Slot> models =
        joint.stream().flatMap(it -> it.plan().plan().orders().stream()).map(Order::slot).toList();
    return plans.world(Subgroup.of(member)).orElseThrow().slots().stream()
        .filter(slot -> models.stream().anyMatch(model -> isLike(slot, model, keeper)))
        .toList();
  }

  private static boolean isLike(Slot slot, Slot model, Keeper keeper) {
    boolean same =
        model.supplier().equals(slot.supplier())
            || model.supplier().equals(keeper.fetching(slot.supplier()));
    return same && Math.abs(ChronoUnit.DAYS.between(slot.ordered(), model.ordered())) <= NEAR_DAYS;
  }

  private Limits of(Duration time) {
    return new Limits(time, limits.rounds());
  }

  private Watch watch() {
    return Watch.stopping(() -> failed || progress.stop());
  }

  private Patience patience(Duration time) {
    return new Patience(watch(), time, found -> ShareBox.isNear(found, limits));
  }

  private static int side() {
    return Runtime.getRuntime().availableProcessors();
  }

  private static void sideBySide(List<Integer> members, IntConsumer task) {
    ExecutorService pool = Executors.newFixedThreadPool(side());
    List<Future<?>> tasks = new ArrayList<>();
    members.forEach(member -> tasks.add(pool.submit(() -> task.accept(member))));
    pool.shutdown();
    try {
      for (Future<?> each : tasks) {
        each.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    }
  }
}
