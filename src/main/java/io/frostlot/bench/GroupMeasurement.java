package io.frostlot.bench;

import io.frostlot.app.SubgroupCosts;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Gap;
import io.frostlot.plan.Shared;
import io.frostlot.plan.Standing;
import io.frostlot.units.Money;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * A shared order of one group.
 *
 * @param joint the plan of all together when the letter was ready; empty where there was none
 * @param shared empty where a member has no plan of its own
 * @param costs of subgroups; empty where they were not asked for
 */
public record GroupMeasurement(
    DrawnGroup drawn,
    Optional<Answer.WithPlan> joint,
    Optional<Shared> shared,
    Optional<SubgroupCosts> costs,
    Spent spent) {

  /**
   * What it took.
   *
   * @param reached goals of the joint plan, from the beginning, members' own plans included
   * @param letter time until sheets could be written, were no subgroups asked for
   * @param peakMegabytes of the whole process; empty where the system does not tell
   */
  public record Spent(Reached reached, Duration letter, OptionalLong peakMegabytes) {}

  Optional<Standing> standing() {
    return joint.map(plan -> plan.plan().standing());
  }

  OptionalDouble bound() {
    return joint.map(Answer.WithPlan::bound).orElse(OptionalDouble.empty());
  }

  Optional<Gap> gap() {
    return joint.flatMap(Gap::of);
  }

  /** Money of members' own plans together, what is reckoned and the days after included. */
  Optional<Money> alone() {
    return shared.map(
        it ->
            it.sheets().stream()
                .map(sheet -> sheet.account().alone())
                .reduce(Money.ZERO, Money::plus));
  }

  /** In one line. */
  public String says() {
    String plan = standing().map(it -> Cells.says(it, bound())).orElse("no joint plan");
    String ways =
        costs
            .map(it -> "; " + it.known() + " of " + it.count() + " subgroups known well enough")
            .orElse("");
    return drawn.name() + ": " + spent.reached().says() + "; " + plan + ways;
  }
}
