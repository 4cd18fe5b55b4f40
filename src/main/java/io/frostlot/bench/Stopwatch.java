package io.frostlot.bench;

import io.frostlot.plan.Answer;
import io.frostlot.program.Watch;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** Writes down when each goal is first reached. */
final class Stopwatch implements Watch {
  private final long start = System.nanoTime();
  private final Map<Goal, Double> seconds = new EnumMap<>(Goal.class);
  private final BooleanSupplier stop;

  Stopwatch(BooleanSupplier stop) {
    this.stop = stop;
  }

  @Override
  public boolean stop() {
    return stop.getAsBoolean();
  }

  @Override
  public synchronized void found(Answer.WithPlan best) {
    double now = (System.nanoTime() - start) / 1e9;
    for (Goal goal : Goal.values()) {
      if (goal.isReached(best)) {
        seconds.putIfAbsent(goal, now);
      }
    }
  }

  synchronized Reached reached() {
    return new Reached(seconds);
  }
}
