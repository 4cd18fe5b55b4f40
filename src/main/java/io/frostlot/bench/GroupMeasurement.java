package io.frostlot.bench;

import io.frostlot.app.SubgroupCosts;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Gap;
import io.frostlot.plan.Shared;
import io.frostlot.plan.Standing;
import io.frostlot.units.Money;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Collectors;

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
   * @param seconds from the beginning, members' own plans included, to each goal of the joint plan
   * @param letter time until sheets could be written, were no subgroups asked for
   * @param peakMegabytes of the whole process; empty where the system does not tell
   */
  public record Spent(Map<Goal, Double> seconds, Duration letter, OptionalLong peakMegabytes) {
    public Spent {
      seconds = Map.copyOf(seconds);
    }

    OptionalDouble to(Goal goal) {
      return seconds.containsKey(goal)
          ? OptionalDouble.of(seconds.get(goal))
          : OptionalDouble.empty();
    }
  }

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
    String times =
        Arrays.stream(Goal.values())
            .filter(spent.seconds()::containsKey)
            .map(goal -> goal.says() + " " + seconds(spent.seconds().get(goal)))
            .collect(Collectors.joining(", "));
    String cost = standing().map(Standing::toString).orElse("no joint plan");
    String ways =
        costs
            .map(it -> "; " + it.known() + " of " + it.count() + " subgroups known well enough")
            .orElse("");
    return drawn.name() + ": " + times + "; " + cost + ", " + bound() + ways;
  }

  private static String seconds(double seconds) {
    return String.format(Locale.ROOT, "%.1f s", seconds);
  }
}
