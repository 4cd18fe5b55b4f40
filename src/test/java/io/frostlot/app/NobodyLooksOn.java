package io.frostlot.app;

import io.frostlot.plan.Answer;

/** A share that nobody follows and nobody stops. */
final class NobodyLooksOn implements ShareBox.Progress {
  @Override
  public boolean stop() {
    return false;
  }

  @Override
  public void found(Answer.WithPlan best) {}

  @Override
  public void alone(int planned, int all) {}

  @Override
  public void subgroups(int planned, int all, double widest) {}
}
