package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.Simplest;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.util.List;
import java.util.Optional;

/**
 * Looks for a plan that is easier to live with: the world is planned again with one order less than
 * before, as long as a plan is found that is as good before money, has as many late meals, and
 * costs at most {@value #WITHIN_PERCENT} % of cash and reckoned money more than the plan shown.
 */
public final class FewerOrders {
  private static final int WITHIN_PERCENT = 2;
  private final Planner planner;

  public FewerOrders(Planner planner) {
    this.planner = planner;
  }

  /**
   * The simplest plan beside the one shown.
   *
   * @param limits for all plans together
   * @param watch once it says stop, what is known so far is the answer
   */
  public Simplest than(Answer.WithPlan shown, World world, Limits limits, Watch watch) {
    Share share = new Share(planner, limits, watch);
    List<Answer.Judged> simplest = List.of();
    int orders = shown.plan().plan().orders().size();
    World asGood = shown.plan().standing().unmet() == 0 ? allMet(world) : world;
    List<Plan> known = List.of(shown.plan().plan());
    while (orders > 0) {
      Optional<Answer> found = share.answerFrom(known, asGood.withMostOrders(orders - 1), 2);
      if (found.isPresent()
          && found.get() instanceof Answer.WithPlan fewer
          && isNear(world, fewer.plan(), shown.plan())) {
        simplest = List.of(fewer.plan());
        orders = fewer.plan().plan().orders().size();
        known = List.of(fewer.plan().plan(), shown.plan().plan());
      } else {
        boolean sure = found.isPresent() && isOut(found.get(), shown.plan());
        return new Simplest(WITHIN_PERCENT, simplest, sure);
      }
    }
    return new Simplest(WITHIN_PERCENT, simplest, true);
  }

  /** That too few orders meet too little is then seen at once, not level by level. */
  private static World allMet(World world) {
    Scenario scenario = world.scenario();
    Policy policy = scenario.policy().withDemand(Policy.Demand.ALL);
    return world.withScenario(scenario.withPolicy(policy));
  }

  private static boolean isNear(World world, Answer.Judged fewer, Answer.Judged shown) {
    return fewer.standing().sameBeforeMoney(shown.standing())
        && late(world, fewer) == late(world, shown)
        && fewer.standing().money().toDouble() <= most(shown);
  }

  /** Is it certain that so few orders are not enough, or cost too much? */
  private static boolean isOut(Answer answer, Answer.Judged shown) {
    if (answer instanceof Answer.Impossible) {
      return true;
    }
    return answer instanceof Answer.WithPlan fewer
        && fewer.bound().isPresent()
        && fewer.plan().standing().compareTo(shown.standing()) > 0
        && (!fewer.plan().standing().sameBeforeMoney(shown.standing())
            || fewer.bound().getAsDouble() > most(shown));
  }

  private static double most(Answer.Judged shown) {
    double spent = shown.books().withoutTail().toDouble();
    return shown.standing().money().toDouble() + spent * WITHIN_PERCENT / 100;
  }

  private static int late(World world, Answer.Judged judged) {
    return Outcome.of(world, judged.plan()).lateMeals();
  }
}
