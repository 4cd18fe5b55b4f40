package io.frostlot.program;

import io.frostlot.plan.Answer;
import java.util.function.BooleanSupplier;

/** Looks on while the engine works; called from the thread that asked for the answer. */
public interface Watch {
  /** Looks away, and never stops. */
  Watch NONE = stopping(() -> false);

  /** Looks away, and stops when it is told to. */
  static Watch stopping(BooleanSupplier stop) {
    return new Watch() {
      @Override
      public boolean stop() {
        return stop.getAsBoolean();
      }

      @Override
      public void found(Answer.WithPlan best) {}
    };
  }

  /** Asked many times a second; once it says yes the best found so far is the answer. */
  boolean stop();

  /**
   * A better plan, or a better bound on the same; what it comes to is known, while its meals may
   * not be handed out to each animal yet (see {@link Engine#handedOut}).
   */
  void found(Answer.WithPlan best);
}
