package io.frostlot.cli;

import io.frostlot.app.ShareBox;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Group;
import io.frostlot.plan.NothingShared;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

/** Says how the planning of a joint order goes, where somebody looks on. */
final class ShareProgress implements ShareBox.Progress {
  private final BooleanSupplier stop;
  private final Progress.Status status;
  private final Clock clock = new Clock();
  private String said = "";
  private volatile NothingShared.Without without = NothingShared.Without.NOBODY;

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
    Money money = best.plan().standing().money();
    OptionalDouble bound = best.bound();
    String known =
        bound.isPresent()
            ? ", at most "
                + amount(money.toDouble() - bound.getAsDouble())
                + " above the best possible"
            : "";
    say("joint plan, best " + money + known);
  }

  @Override
  public void subgroups(int planned, int all, double widest) {
    String known = Double.isFinite(widest) ? amount(widest) : "?";
    say("subgroups planned " + planned + " of " + all + ", least known to within " + known);
  }

  @Override
  public void without(String member, Answer none) {
    without = new NothingShared.Without(List.of(member), none);
  }

  /** Where it was left off. */
  NothingShared leftOff(Group group) {
    return new NothingShared(group, without, stop.getAsBoolean());
  }

  @Override
  public void alone(int planned, int all) {
    say("members' own plans " + planned + " of " + all);
  }

  private static String amount(double money) {
    return String.format(Locale.ROOT, "%.2f", Math.max(0, money));
  }

  private synchronized void say(String line) {
    if (!line.equals(said)) {
      said = line;
      status.show(clock.time() + "  " + line, true);
    }
  }
}
