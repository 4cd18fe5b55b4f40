package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Comparison;
import io.frostlot.plan.Difference;
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
    Habit habit =
        new Habit(
            "a habit",
            new Difference.Side(new Standing(unmetMust, 0, 0, Money.of(140)), late),
            dearerBy);
    return said(new Comparison(List.of(habit), List.of()));
  }

  private String said(Comparison comparison) {
    Answer.WithPlan answer =
        new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(95));
    Outcome outcome = Outcome.of(world, answer.plan().plan());
    return new PlanReport(HandmadeRoom.inputs(world), answer, outcome, List.of())
        .text(comparison, 100)
        .replaceAll("\\s+", " ");
  }

  @Test
  void a_difference_is_a_range_rounded_outwards() {
    assertThat(letter(5, 1, Interval.between(34.109, 41.001)))
        .contains("a habit: costs 34.10 EUR to 41.01 EUR more.");
    assertThat(letter(5, 1, Interval.between(4.2, 4.2))).contains("a habit: costs 4.20 EUR more.");
  }

  /** Nothing costs less than a proven plan; how much more at most, the plan found for it tells. */
  @Test
  void beside_a_proven_plan_it_is_always_told() {
    assertThat(letter(5, 1, Interval.between(0, 1.64)))
        .contains("a habit: costs at most 1.64 EUR more, and never less.");
  }

  @Test
  void where_zero_lies_inside_nothing_is_told() {
    assertThat(letter(5, 1, Interval.between(-1.2, 4)))
        .contains(
            "a habit: cannot tell which costs less: the plan found for it costs 4.00 EUR more, its"
                + " best perhaps up to 1.20 EUR less.");
    assertThat(letter(5, 1, new Interval(OptionalDouble.empty(), OptionalDouble.of(4))))
        .contains("4.00 EUR more, how little it could cost is not known.");
    assertThat(letter(5, 1, Interval.between(-3, 0)))
        .contains("the plan found for it costs the same, its best perhaps up to 3.00 EUR less.");
  }

  @Test
  void a_better_plan_found_on_the_way_is_told() {
    assertThat(letter(5, 1, Interval.between(-6, -4.2)))
        .contains("a habit: costs 4.20 EUR less: a better plan than this one");
  }

  @Test
  void what_was_not_worked_out_is_named() {
    assertThat(said(new Comparison(List.of(), List.of("a habit", "another"))))
        .contains("not worked out: a habit; another.");
    assertThat(said(new Comparison(List.of(), List.of()))).isEmpty();
  }

  @Test
  void a_difference_below_half_a_coin_is_none() {
    assertThat(letter(5, 1, Interval.between(-0.004, 0.004))).contains("a habit: costs the same.");
    assertThat(letter(5, 1, Interval.between(-0.006, 0.006))).contains("cannot tell");
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
