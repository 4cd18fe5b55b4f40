package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A plan of 100 and bounds, by a clock that is set. */
final class FarBoundTest {
  private static final long SECOND = 1_000_000_000;

  private final Best best = new Best(0.005);
  private long now;
  private final FarBound far = new FarBound(best, () -> now);

  private void plan(String money) {
    best.offer(BestTest.plan(0, money));
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
    best.proveAsGood(BestTest.NOTHING_LACKS, 90);
    assertThat(isGivenUpAfter(0)).isFalse();
    assertThat(isGivenUpAfter(60)).isFalse();
  }

  @Test
  void a_far_one_has_a_few_seconds() {
    plan("100");
    best.prove(BestTest.NOTHING_LACKS, 70);
    assertThat(isGivenUpAfter(0)).isFalse();
    assertThat(isGivenUpAfter(4)).isFalse();
    assertThat(isGivenUpAfter(2)).isTrue();
  }

  @Test
  void one_that_took_long_has_as_long_again() {
    plan("100");
    assertThat(isGivenUpAfter(20)).isFalse();
    best.prove(BestTest.NOTHING_LACKS, 70);
    assertThat(isGivenUpAfter(10)).isFalse();
    assertThat(isGivenUpAfter(29)).isFalse();
    assertThat(isGivenUpAfter(2)).isTrue();
  }

  @Test
  void one_that_a_better_plan_comes_near_is_not_given_up() {
    plan("100");
    best.prove(BestTest.NOTHING_LACKS, 70);
    assertThat(isGivenUpAfter(0)).isFalse();
    plan("75");
    assertThat(isGivenUpAfter(60)).isFalse();
  }

  @Test
  void what_is_given_up_stays_so() {
    plan("100");
    best.prove(BestTest.NOTHING_LACKS, 70);
    assertThat(isGivenUpAfter(0)).isFalse();
    assertThat(isGivenUpAfter(6)).isTrue();
    best.prove(BestTest.NOTHING_LACKS, 99);
    assertThat(isGivenUpAfter(1)).isTrue();
  }
}
