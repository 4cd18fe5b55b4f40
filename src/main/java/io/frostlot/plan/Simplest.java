package io.frostlot.plan;

import java.util.List;

/**
 * The plan of fewest orders that costs little more than the plan shown and is as good before money.
 *
 * @param within most that it may cost more, in percent of cash and reckoned money of the plan shown
 * @param plan at most one; none: no plan of fewer orders was found within
 * @param sure it is certain that no plan of still fewer orders would do
 */
public record Simplest(int within, List<Answer.Judged> plan, boolean sure) implements SecondLook {
  public Simplest {
    plan = List.copyOf(plan);
  }
}
