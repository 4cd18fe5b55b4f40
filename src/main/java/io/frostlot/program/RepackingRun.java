package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Plan;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/** One {@link Repacking}, in spells; what it finds is judged and replayed like any plan. */
final class RepackingRun {
  private static final int STEPS_A_ROUND = 300;
  private static final long JUDGE_AFTER_NANOS = TimeUnit.MILLISECONDS.toNanos(300);

  /** So many times as long as it takes to judge. */
  private static final int SELDOM = 20;

  private static final long SPELL_NANOS = TimeUnit.SECONDS.toNanos(1);

  private final Around around;
  private final TrialWorld trials;
  private final Repacking search;
  private Answer.Judged from;
  private Optional<Plan> unjudged = Optional.empty();
  private long judgeFrom;
  private long turned;
  private long worked;

  /**
   * What all runs of a search share.
   *
   * @param best told every plan that is better
   * @param timed by the clock, or in rounds of steps?
   * @param polished are plans found fed anew, now and then? A local search does that nearly as well
   *     as can be; where not, there is one spell: each ends with judging
   */
  record Around(Best best, Solving solving, Polishing polishing, boolean timed, boolean polished) {}

  /**
   * How it cools down.
   *
   * @param nanos of its own, by the clock; infinite: by steps only
   */
  record Pace(double warmth, int steps, double nanos) {}

  /** A run that has not begun. */
  RepackingRun(
      Around around, TrialWorld trials, Answer.Judged from, TrialPlan plan, Pace pace, long seed) {
    this.around = around;
    this.trials = trials;
    this.from = from;
    Cooling cooling = new Cooling(pace.warmth(), pace.steps(), () -> worked() / pace.nanos());
    search = new Repacking(trials, plan, cooling, seed);
  }

  /** The best of what it began with and what it has found. */
  Answer.Judged found() {
    return from;
  }

  boolean isCold() {
    return search.isCold();
  }

  /** Does another plan meet more meals? Where it only costs less it does as well to go on. */
  boolean isLeftBehind(Answer.Judged other) {
    return other.standing().unmet() < from.standing().unmet();
  }

  /** Nanoseconds of all its spells. */
  private double worked() {
    return worked + (double) (turned == 0 ? 0 : System.nanoTime() - turned);
  }

  /** Until that time, or until it is cold; where rounds are counted, one of them. */
  void run(long end) {
    boolean feeds = around.polished();
    do {
      long left = end - System.nanoTime();
      spell(feeds ? Math.min(SPELL_NANOS, left) : left);
      if (feeds && (!around.timed() || around.polishing().isDue())) {
        around.polishing().fedAnew().ifPresent(this::offer);
      }
    } while (around.timed() && around.solving().goesOn() && !isCold() && System.nanoTime() < end);
  }

  private void spell(long nanos) {
    turned = System.nanoTime();
    long end = turned + nanos;
    int last = search.steps() + STEPS_A_ROUND;
    BooleanSupplier on =
        () ->
            around.solving().goesOn()
                && !isCold()
                && (around.timed() ? System.nanoTime() < end : search.steps() < last);
    search.run(
        on,
        () -> {
          unjudged = Optional.of(search.plan().plan());
          if (around.timed() && System.nanoTime() > judgeFrom) {
            judge();
          }
        });
    judge();
    worked += System.nanoTime() - turned;
    turned = 0;
  }

  private void judge() {
    long begin = System.nanoTime();
    Optional<Answer.Judged> some = unjudged.flatMap(trials.judge()::judge);
    unjudged = Optional.empty();
    long end = System.nanoTime();
    judgeFrom = end + Math.max(JUDGE_AFTER_NANOS, SELDOM * (end - begin));
    some.ifPresent(this::offer);
    some.ifPresent(around.polishing()::found);
  }

  private void offer(Answer.Judged plan) {
    around.best().offer(plan);
    if (plan.standing().compareTo(from.standing()) < 0) {
      from = plan;
    }
  }
}
