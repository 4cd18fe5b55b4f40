package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.SecondLook;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Optional;
import java.util.Queue;

/**
 * What is looked for once a plan is known, one thing after another, each in an equal part of the
 * time that is left.
 */
public final class SecondLooks {
  private static final Duration LEAST = Duration.ofSeconds(15);
  private final Share share;
  private final Queue<Look> looks;

  /** One of them. */
  private interface Look {
    Optional<? extends SecondLook> in(Limits limits);
  }

  /**
   * None has begun.
   *
   * @param limits for all of them together
   * @param watch once it says stop, what is not worked out is not wanted
   */
  public SecondLooks(Planner planner, Solved shown, Limits limits, Watch watch) {
    share = new Share(planner, limits, watch);
    World world = shown.world();
    Answer.WithPlan answer = shown.answer();
    looks =
        new ArrayDeque<>(
            List.of(
                it -> Optional.of(new FewerOrders(planner).than(answer, world, it, watch)),
                it -> new BudgetCost(planner).of(answer, world, it, watch),
                it -> new FillBoxes(planner).of(shown, it, watch),
                it -> Optional.of(new Habits(planner).compare(world, answer, it, watch)),
                it -> new FindOut(planner).of(shown, it, watch)));
  }

  /**
   * How long to look: half as long again as the plan took, but a few seconds at least, and at most
   * half of what it might have taken. Where rounds are counted, the clock does not count.
   */
  public static Limits share(Limits plan, Duration took) {
    Duration most = plan.time().dividedBy(2);
    Duration half = took.dividedBy(2);
    Duration fair = half.compareTo(LEAST) < 0 ? LEAST : half;
    boolean counted = plan.rounds().isPresent();
    return new Limits(counted || fair.compareTo(most) > 0 ? most : fair, plan.rounds());
  }

  /** Is there something that was not looked for? */
  public boolean hasNext() {
    return !looks.isEmpty();
  }

  /** Looks for the next thing; empty where nothing is to be said of it. */
  public Optional<SecondLook> next() {
    Limits part = share.left(looks.size());
    return looks.remove().in(part).map(it -> it);
  }
}
