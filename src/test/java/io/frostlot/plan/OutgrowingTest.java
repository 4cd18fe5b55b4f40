package io.frostlot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** Bark takes hoppers of 10 g until 1 February, then 17 to 27 g; Amber 17 to 26 g all the time. */
class OutgrowingTest {
  private final World world = HandmadeRoom.world();

  private World with(Predicate<Demand> which) {
    return world.withDemands(world.demands().stream().filter(which).toList());
  }

  private static boolean isBarksLater(Demand demand) {
    return demand.meal().eater().equals("Bark")
        && demand.meal().days().best().isAfter(LocalDate.parse("2031-02-01"));
  }

  @Test
  void who_takes_heavier_prey_later_has_outgrown_the_lighter() {
    assertThat(Outgrowing.is(world, HandmadeRoom.HOPPER)).isTrue();
    assertThat(Outgrowing.is(world, HandmadeRoom.ADULT)).isFalse();
  }

  /** Amber, who takes mice too, never took hoppers. */
  @Test
  void who_has_no_later_meals_has_not() {
    assertThat(Outgrowing.is(with(it -> !isBarksLater(it)), HandmadeRoom.HOPPER)).isFalse();
  }

  @Test
  void what_nobody_takes_is_not_outgrown() {
    assertThat(Outgrowing.is(with(OutgrowingTest::isBarksLater), HandmadeRoom.HOPPER)).isFalse();
  }
}
