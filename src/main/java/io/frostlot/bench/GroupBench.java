package io.frostlot.bench;

import io.frostlot.app.ShareBox;
import io.frostlot.app.SubgroupCosts;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Shared;
import io.frostlot.program.Limits;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Measures how groups are planned in one process, one after the other, as a keeper who asks for a
 * shared order would have it. Solver threads left behind are waited for before the next begins.
 */
public final class GroupBench {
  private final ShareBox shareBox;
  private final ShareBox.Work work;
  private final BooleanSupplier stop;

  /**
   * A bench.
   *
   * @param stop ends everything as soon as may be, once it says yes
   */
  public GroupBench(ShareBox shareBox, ShareBox.Work work, BooleanSupplier stop) {
    this.shareBox = shareBox;
    this.work = work;
    this.stop = stop;
  }

  /**
   * Measures.
   *
   * @param news told of each measurement when it is done
   */
  public List<GroupMeasurement> measure(List<DrawnGroup> groups, Consumer<GroupMeasurement> news) {
    List<GroupMeasurement> all = new ArrayList<>();
    for (DrawnGroup group : groups) {
      if (!stop.getAsBoolean()) {
        GroupMeasurement measured = measure(group);
        all.add(measured);
        news.accept(measured);
      }
    }
    return all;
  }

  private GroupMeasurement measure(DrawnGroup drawn) {
    PeakMemory.reset();
    LeftBehind left = LeftBehind.now();
    Following following = new Following(stop);
    long begin = System.nanoTime();
    Optional<Shared> shared = shareBox.share(drawn.group(), work, following);
    Duration all = Duration.ofNanos(System.nanoTime() - begin);
    Duration ways = following.costs.map(SubgroupCosts::took).orElse(Duration.ZERO);
    GroupMeasurement measured =
        new GroupMeasurement(
            drawn,
            following.joint,
            shared,
            following.costs,
            new GroupMeasurement.Spent(
                following.watch.reached(), all.minus(ways), PeakMemory.megabytes()));
    left.settle(work.subgroups().map(Limits::time).orElse(work.joint().time()));
    return measured;
  }

  /** Writes down what the shared order tells while it is planned. */
  private static final class Following implements ShareBox.Progress {
    private final Stopwatch watch;
    private Optional<Answer.WithPlan> joint = Optional.empty();
    private Optional<SubgroupCosts> costs = Optional.empty();

    Following(BooleanSupplier stop) {
      watch = new Stopwatch(stop);
    }

    @Override
    public boolean stop() {
      return watch.stop();
    }

    @Override
    public void found(Answer.WithPlan best) {
      watch.found(best);
      joint = Optional.of(best);
    }

    @Override
    public void alone(int planned, int all) {}

    @Override
    public void subgroups(int planned, int all, double widest) {}

    @Override
    public void costs(SubgroupCosts known) {
      costs = Optional.of(known);
    }
  }
}
