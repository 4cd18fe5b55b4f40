package io.frostlot.app;

import io.frostlot.files.Digest;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Worlds that resemble each other, solved one after another (each on both cores): every plan found
 * is offered to the questions after it, so that a difference does not change its sign by chance,
 * and the same question is answered once.
 */
public final class Questions {
  private static final int MOST_KNOWN = 16;
  private final Planner planner;
  private final Watch watch;
  private final Duration all;
  private final long start = System.nanoTime();
  private final Map<String, Optional<Solved>> answered = new HashMap<>();
  private final List<Plan> known = new ArrayList<>();
  private Optional<Answer.Impossible> clash = Optional.empty();

  /**
   * No question yet.
   *
   * @param all time for all questions together
   */
  public Questions(Planner planner, Duration all, Watch watch) {
    this.planner = planner;
    this.all = all;
    this.watch = watch;
  }

  /** What clashed where a question without any plan before was impossible. */
  public Optional<Answer.Impossible> clash() {
    return clash;
  }

  /** Is time up, or were we asked to stop? */
  public boolean over() {
    return watch.stop() || left().isNegative() || left().isZero();
  }

  /** What one order a month comes to, in what time is left. */
  Optional<Answer.Judged> monthly(World world) {
    return over()
        ? Optional.empty()
        : new Habits(planner).monthly(world, limits(left().toMillis()), watch);
  }

  private Duration left() {
    return all.minusNanos(System.nanoTime() - start);
  }

  /** Takes up a plan from elsewhere. */
  public void learn(Plan plan) {
    known.remove(plan);
    known.add(0, plan);
    if (known.size() > MOST_KNOWN) {
      known.remove(MOST_KNOWN);
    }
  }

  /** The answer; empty where there is none, or time is up. */
  public Optional<Solved> ask(World world, double share) {
    String digest = Digest.of(world);
    if (!answered.containsKey(digest)) {
      if (over()) {
        return Optional.empty();
      }
      answered.put(digest, solve(world, share));
    }
    return answered.get(digest);
  }

  /** The answer after another look, begun with all that was found since; never worse. */
  public Optional<Solved> again(World world, double share) {
    Optional<Solved> before = ask(world, share);
    if (over() || before.filter(it -> it.answer() instanceof Answer.Proven).isPresent()) {
      return before;
    }
    before.ifPresent(it -> learn(it.plan()));
    Optional<Solved> after = solve(world, share).map(it -> before.map(it::atBestAs).orElse(it));
    if (after.isPresent()) {
      answered.put(Digest.of(world), after);
    }
    return after.isPresent() ? after : before;
  }

  /** The answer after two looks. */
  Optional<Solved> twice(World world, double first, double second) {
    return ask(world, first).flatMap(it -> again(world, second));
  }

  /** Looks for a plan begun with none, where those found before would lead astray. */
  void learnAnew(World world, double share) {
    if (!over()) {
      long millis = Math.min(left().toMillis(), (long) (share * all.toMillis()));
      if (planner.plan(world, limits(millis), watch) instanceof Answer.WithPlan found) {
        learn(found.plan().plan());
      }
    }
  }

  private Optional<Solved> solve(World world, double share) {
    long millis = Math.max(200, Math.min(left().toMillis(), (long) (share * all.toMillis())));
    Answer answer =
        known.isEmpty()
            ? planner.plan(world, limits(left().toMillis()), new FirstPlan(watch, millis))
            : planner.planFrom(List.copyOf(known), world, limits(millis), watch);
    if (!(answer instanceof Answer.WithPlan found)) {
      if (known.isEmpty() && answer instanceof Answer.Impossible impossible) {
        clash = Optional.of(impossible);
      }
      return Optional.empty();
    }
    learn(found.plan().plan());
    return Optional.of(new Solved(world, found));
  }

  private static Limits limits(long millis) {
    return new Limits(Duration.ofMillis(Math.max(1, millis)), OptionalInt.empty());
  }

  /** Without any plan there is nothing to compare: the first search goes on until it has one. */
  private static final class FirstPlan implements Watch {
    private final Watch watch;
    private final long until;
    private volatile boolean found;

    FirstPlan(Watch watch, long millis) {
      this.watch = watch;
      until = System.nanoTime() + millis * 1_000_000;
    }

    @Override
    public boolean stop() {
      return watch.stop() || (found && System.nanoTime() > until);
    }

    @Override
    public void found(Answer.WithPlan best) {
      found = true;
      watch.found(best);
    }
  }
}
