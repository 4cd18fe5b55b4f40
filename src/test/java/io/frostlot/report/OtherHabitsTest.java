package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Habit;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The plan has five must-meals unmet and one meal late. */
class OtherHabitsTest {
  private final World world = HandmadeRoom.world();

  private String letter(int unmetMust, int late, Interval dearerBy) {
    Answer.WithPlan answer =
        new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(95));
    Habit habit =
        new Habit("a habit", new Standing(unmetMust, 0, 0, Money.of(140)), late, dearerBy);
    Outcome outcome = Outcome.of(world, answer.plan().plan());
    return new PlanReport(HandmadeRoom.inputs(world), answer, outcome, List.of())
        .habits(List.of(habit), 100)
        .replaceAll("\\s+", " ");
  }

  @Test
  void a_difference_is_a_range_rounded_outwards() {
    assertThat(letter(5, 1, Interval.between(34.109, 41.001)))
        .contains("a habit: costs 34.10 EUR to 41.01 EUR more.");
    assertThat(letter(5, 1, Interval.between(-4.2, -4.2)))
        .contains("a habit: costs 4.20 EUR less.");
    assertThat(letter(5, 1, new Interval(OptionalDouble.of(3), OptionalDouble.empty())))
        .contains("a habit: costs at least 3.00 EUR more.");
  }

  @Test
  void where_zero_lies_inside_nothing_is_told() {
    assertThat(letter(5, 1, Interval.between(-1.2, 4)))
        .contains(
            "a habit: cannot tell which costs less (between 1.20 EUR less and 4.00 EUR more).");
    assertThat(letter(5, 1, new Interval(OptionalDouble.empty(), OptionalDouble.of(4))))
        .contains("a habit: cannot tell which costs less.");
  }

  @Test
  void a_difference_below_half_a_coin_is_none() {
    assertThat(letter(5, 1, Interval.between(-0.004, 0.004))).contains("a habit: costs the same.");
    assertThat(letter(5, 1, Interval.between(-0.006, 0.004))).contains("cannot tell");
  }

  @Test
  void money_is_not_compared_where_meals_differ() {
    assertThat(letter(4, 1, Interval.between(34, 41)))
        .contains(
            "a habit: 4 must-meals unmet, 1 meal late, where this plan has 5 must-meals unmet,")
        .contains("so their money is not compared")
        .doesNotContain("34.00");
    assertThat(letter(5, 0, Interval.between(34, 41))).doesNotContain("34.00");
  }
}
