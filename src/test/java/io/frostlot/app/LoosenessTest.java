package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LoosenessTest {
  private final Looseness looseness = new Looseness();

  @Test
  void what_is_looser_than_something_looser_is_looser() {
    looseness.state(1, 2);
    looseness.state(2, 3);
    looseness.state(4, 3);

    assertThat(looseness.looserThan(3)).containsExactlyInAnyOrder(1, 2, 4);
    assertThat(looseness.isLooser(1, 3)).isTrue();
    assertThat(looseness.isLooser(3, 1)).isFalse();
    assertThat(looseness.isLooser(4, 2)).isFalse();
  }

  @Test
  void nothing_is_looser_than_itself_even_where_two_allow_the_same() {
    looseness.state(1, 1);
    looseness.state(1, 2);
    looseness.state(2, 1);

    assertThat(looseness.isLooser(1, 1)).isFalse();
    assertThat(looseness.isLooser(1, 2)).isTrue();
    assertThat(looseness.isLooser(2, 1)).isTrue();
  }
}
