package io.frostlot.cli;

import io.frostlot.plan.Answer;
import io.frostlot.program.Watch;
import java.util.Locale;
import java.util.function.BooleanSupplier;

/** Says, where somebody looks on, that the plan is done and what is still waited for. */
final class Comparing implements Watch {
  private static final long REDRAWN_NANOS = 500_000_000;
  private final BooleanSupplier stop;
  private final Progress.Status status;
  private final long start = System.nanoTime();
  private long drawn = start;

  Comparing(BooleanSupplier stop, Progress.Status status) {
    this.stop = stop;
    this.status = status;
  }

  @Override
  public boolean stop() {
    long now = System.nanoTime();
    if (now - drawn > REDRAWN_NANOS) {
      drawn = now;
      String clock = String.format(Locale.ROOT, "%5.1f s", (now - start) / 1e9);
      status.show(clock + "  comparing with habits; Ctrl-C leaves it out", false);
    }
    return stop.getAsBoolean();
  }

  @Override
  public void found(Answer.WithPlan best) {}
}
