package io.frostlot.report;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.HandmadePlan;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.World;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HowSureTest {
  private final World world = HandmadeRoom.world();

  private String letter(Answer.WithPlan answer) {
    Outcome outcome = Outcome.of(world, answer.plan().plan());
    return new PlanReport(HandmadeRoom.inputs(world), answer, outcome, List.of())
        .text(100)
        .replaceAll("\\s+", " ");
  }

  /** Rounded up to the next fraction in use, so that no gap is shown smaller than it is. */
  @ParameterizedTest
  @CsvSource({
    "0.01, less than a twentieth of a box charge",
    "0.1, a tenth of a box charge",
    "0.12, a fifth of a box charge",
    "0.333, a third of a box charge",
    "0.34, half a box charge",
    "0.8, one box charge",
    "1.2, one and a half box charges",
    "2.31, 2.4 box charges"
  })
  void a_gap_is_told_in_box_charges(double charges, String words) {
    assertThat(HowSure.boxCharges(charges)).isEqualTo(words);
  }

  @Test
  void a_gap_is_told_in_money_percent_and_box_charges() {
    // 103.215 - 95.995 = 7.22; of 99.80 + 2.595 = 102.395 that is 7.05 %; a box charge is 43 / 2 =
    // 21.50
    Answer.WithPlan answer =
        new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(95.995));
    assertThat(letter(answer))
        .contains(
            "at most 7.22 EUR above the best possible (7.1 % of cash and reckoned; a third of a box"
                + " charge)");
  }

  @Test
  void a_proven_plan_is_called_so_and_only_a_proven_one() {
    assertThat(letter(new Answer.Proven(HandmadePlan.judged(world), 103.215)))
        .contains("Proven best:");
    assertThat(letter(new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(103.215))))
        .doesNotContain("roven best");
  }

  @Test
  void without_a_bound_nothing_is_claimed() {
    assertThat(letter(new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.empty())))
        .contains("How far it is from the best possible is not known yet")
        .doesNotContain("at most");
  }

  @Test
  void a_gap_as_large_as_the_cost_tells_nothing() {
    assertThat(letter(new Answer.BestFound(HandmadePlan.judged(world), OptionalDouble.of(-60))))
        .contains("how little money could do is not known yet")
        .contains("the best found; how far from the best possible is not known")
        .doesNotContain("at most");
  }
}
