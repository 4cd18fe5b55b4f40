package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Plan;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A plan of 100 and bounds, by a clock that is set. */
final class FarBoundTest {
  private static final long SECOND = 1_000_000_000;
  private static final Map<Level, Double> NOTHING_LACKS =
      Map.of(Level.UNMET_MUST, 0.0, Level.UNMET_OTHER, 0.0, Level.SHORTFALL, 0.0);

  private final Best best = new Best(0.005);
  private long now;
  private final FarBound far = new FarBound(best, () -> now);

  private void plan(String money) {
    Books books = new Books();
    books.reckoned("any", Money.of(money));
    best.offer(new Answer.Judged(new Plan(List.of(), List.of(), List.of(), List.of()), books));
  }

  private boolean isGivenUpAfter(int seconds) {
    now += seconds * SECOND;
    return far.isGivenUp();
  }

  @Test
  void without_a_bound_nothing_is_given_up() {
    plan("100");
    assertThat(isGivenUpAfter(0)).isFalse();
    assertThat(isGivenUpAfter(60)).isFalse();
  }

  @Test
  void a_near_bound_is_not_given_up() {
    plan("100");
    best.proveAsGood(NOTHING_LACKS, 90);
    assertThat(isGivenUpAfter(0)).isFalse();
    assertThat(isGivenUpAfter(60)).isFalse();
  }

  @Test
  void a_far_one_has_a_few_seconds() {
    plan("100");
    best.prove(NOTHING_LACKS, 70);
    assertThat(isGivenUpAfter(0)).isFalse();
    assertThat(isGivenUpAfter(4)).isFalse();
    assertThat(isGivenUpAfter(2)).isTrue();
  }

  @Test
  void one_that_took_long_has_as_long_again() {
    plan("100");
    assertThat(isGivenUpAfter(20)).isFalse();
    best.prove(NOTHING_LACKS, 70);
    assertThat(isGivenUpAfter(10)).isFalse();
    assertThat(isGivenUpAfter(29)).isFalse();
    assertThat(isGivenUpAfter(2)).isTrue();
  }

  @Test
  void one_that_a_better_plan_comes_near_is_not_given_up() {
    plan("100");
    best.prove(NOTHING_LACKS, 70);
    assertThat(isGivenUpAfter(0)).isFalse();
    plan("75");
    assertThat(isGivenUpAfter(60)).isFalse();
  }

  @Test
  void what_is_given_up_stays_so() {
    plan("100");
    best.prove(NOTHING_LACKS, 70);
    assertThat(isGivenUpAfter(0)).isFalse();
    assertThat(isGivenUpAfter(6)).isTrue();
    best.prove(NOTHING_LACKS, 99);
    assertThat(isGivenUpAfter(1)).isTrue();
  }
}
