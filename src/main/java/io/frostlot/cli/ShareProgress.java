package io.frostlot.cli;

import io.frostlot.app.ShareBox;
import io.frostlot.plan.Answer;
import java.util.Locale;
import java.util.function.BooleanSupplier;

/** Says how the planning of a joint order goes, where somebody looks on. */
final class ShareProgress implements ShareBox.Progress {
  private final BooleanSupplier stop;
  private final Progress.Status status;
  private final Clock clock = new Clock();

  ShareProgress(BooleanSupplier stop, Progress.Status status) {
    this.stop = stop;
    this.status = status;
  }

  @Override
  public boolean stop() {
    return stop.getAsBoolean();
  }

  @Override
  public void found(Answer.WithPlan best) {
    say("joint plan, best " + best.plan().standing().money());
  }

  @Override
  public void subgroups(int planned, int all, double widest) {
    String known = Double.isFinite(widest) ? String.format(Locale.ROOT, "%.2f", widest) : "?";
    say("subgroups planned " + planned + " of " + all + ", least known to within " + known);
  }

  private synchronized void say(String line) {
    status.show(clock.time() + "  " + line, true);
  }
}
