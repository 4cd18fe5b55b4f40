package io.frostlot.cli;

import io.frostlot.plan.Answer;
import io.frostlot.program.Watch;
import java.util.function.BooleanSupplier;

/** Says, where somebody looks on, that the plan is done and what is still waited for. */
final class Comparing implements Watch {
  private static final long REDRAWN_NANOS = 500_000_000;
  private final BooleanSupplier stop;
  private final Progress.Status status;
  private final Clock clock = new Clock();
  private long drawn = System.nanoTime();

  Comparing(BooleanSupplier stop, Progress.Status status) {
    this.stop = stop;
    this.status = status;
  }

  @Override
  public boolean stop() {
    long now = System.nanoTime();
    if (now - drawn > REDRAWN_NANOS) {
      drawn = now;
      status.show(
          clock.time() + "  the plan is done, looking at other ways; Ctrl-C leaves them out",
          false);
    }
    return stop.getAsBoolean();
  }

  @Override
  public void found(Answer.WithPlan best) {}
}
