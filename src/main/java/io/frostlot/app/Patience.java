package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.program.Watch;
import java.time.Duration;
import java.util.function.Predicate;

/** Stops once there is a plan and the time for it is over, or it is known well enough. */
final class Patience implements Watch {
  private final Watch other;
  private final long until;
  private final Predicate<Answer.WithPlan> enough;
  private volatile boolean found;
  private volatile boolean known;

  /**
   * From now on.
   *
   * @param other told all, and stops too
   * @param time for the best plan; the first is waited for longer
   * @param enough need it be known no better?
   */
  Patience(Watch other, Duration time, Predicate<Answer.WithPlan> enough) {
    this.other = other;
    this.enough = enough;
    until = System.nanoTime() + time.toNanos();
  }

  @Override
  public boolean stop() {
    return known || (found && System.nanoTime() - until > 0) || other.stop();
  }

  @Override
  public void found(Answer.WithPlan best) {
    found = true;
    known = enough.test(best);
    other.found(best);
  }
}
