package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;

/** Finds plans. */
public interface Planner {
  /**
   * The best answer that can be had within the budget, or up to the time the watch says stop.
   *
   * @param watch told of every better plan; asked often whether to stop
   */
  Answer plan(World world, Budget budget, Watch watch);

  /** Looks on while a planner works; called from any thread. */
  interface Watch {
    /** Looks away, and never stops. */
    Watch NONE =
        new Watch() {
          @Override
          public boolean stop() {
            return false;
          }

          @Override
          public void found(Answer.WithPlan best) {}
        };

    boolean stop();

    /** A better plan, or a better bound on the same. */
    void found(Answer.WithPlan best);
  }
}
