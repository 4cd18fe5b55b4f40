package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.util.Optional;

/** Solves a world level by level; every plan is judged by every rule before it is shown. */
public final class Engine {
  private Engine() {}

  /** The best answer within the limits, or up to the time the watch says stop. */
  public static Answer solve(World world, Limits limits, Watch watch) {
    Search search = new Search(world, limits, watch);
    Optional<Answer.WithPlan> best = search.run();
    if (best.isPresent()) {
      return best.get();
    }
    return search.isImpossible() ? new Clash(world).find() : new Answer.NothingFound();
  }

  /** What a plan of any making comes to; empty where it breaks a rule or cannot be followed. */
  public static Optional<Answer.Judged> judge(World world, Plan plan) {
    return new Judge(world).judge(plan);
  }

  /**
   * What a {@link Watch} was told of, as an answer: of many animals it is told of plans whose meals
   * are not handed out to each yet.
   */
  public static Answer.WithPlan handedOut(World world, Answer.WithPlan told) {
    return judge(world, told.plan().plan()).isPresent() ? told : Kinds.of(world).handedOut(told);
  }
}
