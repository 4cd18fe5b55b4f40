package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/** A share of the time in which several worlds are planned; what one leaves the next ones have. */
final class Share {
  private static final long LEAST_NANOS = 1_000_000;
  private final Planner planner;
  private final Limits limits;
  private final Watch watch;
  private final long start = System.nanoTime();

  Share(Planner planner, Limits limits, Watch watch) {
    this.planner = planner;
    this.limits = limits;
    this.watch = watch;
  }

  /** An equal part of what is left, for so many things to do. */
  Share part(int toDo) {
    return new Share(planner, left(toDo), watch);
  }

  /** Is nothing left of it, or nothing wanted any more? */
  boolean isOver() {
    return watch.stop() || (limits.rounds().isEmpty() && nanosLeft() < LEAST_NANOS);
  }

  /** For how many things there is so much time each; at least one, at most so many. */
  int atLeast(Duration each, int most) {
    long things = limits.rounds().isPresent() ? most : nanosLeft() / each.toNanos();
    return (int) Math.max(1, Math.min(most, things));
  }

  /** In an equal part of what is left; empty without a plan, or where the watch says stop. */
  Optional<Answer.WithPlan> plan(World world, int toDo) {
    return answer(toDo, (limits, watch) -> planner.plan(world, limits, watch))
        .flatMap(
            answer ->
                answer instanceof Answer.WithPlan found ? Optional.of(found) : Optional.empty());
  }

  /**
   * The same, begun with plans of worlds that resemble this one; empty where no time is left, or
   * where the watch says stop.
   */
  Optional<Answer> answerFrom(List<Plan> known, World world, int toDo) {
    return answer(toDo, (limits, watch) -> planner.planFrom(known, world, limits, watch));
  }

  private Optional<Answer> answer(int toDo, BiFunction<Limits, Watch, Answer> solve) {
    if (isOver()) {
      return Optional.empty();
    }
    Answer answer = solve.apply(left(toDo), Watch.stopping(watch::stop));
    return watch.stop() ? Optional.empty() : Optional.of(answer);
  }

  /** An equal part of what is left, for so many things to do. */
  Limits left(int parts) {
    long nanos = Math.max(LEAST_NANOS, nanosLeft() / parts);
    return new Limits(Duration.ofNanos(nanos), limits.rounds());
  }

  private long nanosLeft() {
    return limits.time().toNanos() - (System.nanoTime() - start);
  }
}
