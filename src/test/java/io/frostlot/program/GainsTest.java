package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pseudo-costs by hand. */
class GainsTest {
  private static final Counts.Count EARLY = count(0, 0);
  private static final Counts.Count LATE = count(1, 2);
  private static final Counts.Count LATEST = count(2, 2);

  @Test
  void where_nothing_is_known_the_earlier_turn_promises_more_and_a_half_the_most() {
    Gains.Promise promise = new Gains().promise();

    assertThat(promise.of(EARLY, 3.5)).isEqualTo(0.25);
    assertThat(promise.of(EARLY, 3.25)).isEqualTo(0.1875);
    assertThat(promise.of(LATE, 3.5)).isEqualTo(0.0625);
  }

  /** At 3.25 the node below brought 2 (8 a unit), the one above 6 (8 a unit too), then 1 and 3. */
  @Test
  void what_was_branched_on_promises_what_it_brought_on_average() {
    Gains gains = new Gains();
    gains.learn(LATE, 3.25, 2, 6);
    gains.learn(LATE, 3.25, 1, 3);

    Gains.Promise promise = gains.promise();

    assertThat(promise.of(LATE, 7.5)).isEqualTo(3 * 3);
    assertThat(promise.of(LATEST, 7.5)).isEqualTo(1.5 * 1.5);
    assertThat(promise.of(EARLY, 7.5)).isEqualTo(3 * 3);
  }

  @Test
  void what_brings_nothing_on_one_side_still_counts_by_the_other() {
    Gains gains = new Gains();
    gains.learn(EARLY, 0.5, 0, 8);
    gains.learn(LATE, 0.5, 0, 2);

    Gains.Promise promise = gains.promise();

    assertThat(promise.of(EARLY, 0.5)).isGreaterThan(promise.of(LATE, 0.5));
    assertThat(promise.of(LATE, 0.5)).isGreaterThan(0);
  }

  private static Counts.Count count(int column, int turn) {
    return new Counts.Count("number " + column, Optional.empty(), new Var(column), turn);
  }
}
