package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Shortfall;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Bounds and plans that contradict each other. */
class BestTest {
  static final Map<Level, Double> NOTHING_LACKS =
      Map.of(Level.UNMET_MUST, 0.0, Level.UNMET_OTHER, 0.0, Level.SHORTFALL, 0.0);

  private final Best best = new Best(0.005);

  static Answer.Judged plan(int unmet, String money) {
    Books books = new Books();
    books.unmet(unmet, true);
    books.reckoned("any", Money.of(money));
    return new Answer.Judged(new Plan(List.of(), List.of(), List.of(), List.of()), books);
  }

  private Answer.WithPlan answer() {
    return best.answer().orElseThrow();
  }

  @Test
  void a_plan_half_a_cent_above_the_bound_is_proven() {
    best.prove(NOTHING_LACKS, 10);
    best.offer(plan(0, "10.005"));
    assertThat(answer()).isInstanceOf(Answer.Proven.class);
  }

  @Test
  void a_plan_below_a_bound_shows_the_bound_to_be_false() {
    best.prove(NOTHING_LACKS, 12);
    best.offer(plan(0, "11.98"));
    assertThat(((Answer.BestFound) answer()).bound()).isEmpty();
  }

  @Test
  void a_bound_above_the_plan_proves_nothing_and_no_later_one_does() {
    best.offer(plan(0, "10"));
    best.prove(NOTHING_LACKS, 1010);
    best.prove(NOTHING_LACKS, 10);
    assertThat(((Answer.BestFound) answer()).bound()).isEmpty();
  }

  @Test
  void a_plan_that_lacks_less_than_any_could_shows_the_bound_to_be_false() {
    best.prove(Map.of(Level.UNMET_MUST, 2.0), 10);
    best.offer(plan(1, "50"));
    best.prove(NOTHING_LACKS, 50);
    assertThat(answer()).isInstanceOf(Answer.BestFound.class);
  }

  @Test
  void a_plan_is_not_impossible_whatever_was_said() {
    best.proveImpossible();
    best.offer(plan(0, "10"));
    assertThat(best.isImpossible()).isFalse();
  }

  private static Answer.Judged falling(long percent, String money) {
    Answer.Judged judged = plan(0, money);
    judged.books().shortfall(new Shortfall("any", Shortfall.Unit.PERCENT, percent, List.of()));
    return judged;
  }

  private static Map<Level, Double> shortfall(double most) {
    return Map.of(Level.UNMET_MUST, 0.0, Level.UNMET_OTHER, 0.0, Level.SHORTFALL, most);
  }

  @Test
  void a_bound_of_plans_that_fall_no_shorter_is_none_of_all_plans() {
    best.proveAsGood(shortfall(5), 8);
    best.offer(falling(3, "10"));
    assertThat(answer().bound()).isEmpty();
    assertThat(answer().boundOfAsGood()).hasValue(8);
    assertThat(answer()).isInstanceOf(Answer.BestFound.class);
  }

  @Test
  void a_bound_of_plans_that_fall_less_short_says_nothing() {
    best.proveAsGood(shortfall(2), 9);
    best.offer(falling(3, "8"));
    assertThat(answer().boundOfAsGood()).isEmpty();
  }

  @Test
  void where_a_meal_is_unmet_nothing_is_said_of_plans_as_good() {
    best.proveAsGood(
        Map.of(Level.UNMET_MUST, 1.0, Level.UNMET_OTHER, 0.0, Level.SHORTFALL, 0.0), 9);
    best.offer(plan(1, "10"));
    assertThat(answer().boundOfAsGood()).isEmpty();
  }

  @Test
  void a_search_beside_proves_a_plan_once_no_plan_is_better_before_money() {
    best.offer(falling(3, "10"));
    best.proveBeside(best.plan().orElseThrow().standing(), 0.001);
    assertThat(answer()).isInstanceOf(Answer.BestFound.class);
    best.prove(shortfall(3), 4);
    assertThat(answer()).isInstanceOf(Answer.Proven.class);
  }
}
