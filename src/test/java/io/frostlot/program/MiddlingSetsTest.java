package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.bench.RoomDraw;
import io.frostlot.bench.RoomSize;
import io.frostlot.plan.World;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** On drawn rooms (invented); the clock only ends what has found something. */
class MiddlingSetsTest {
  private static final long MILLIS = 120_000;

  private static World room(RoomSize size) {
    return World.of(RoomDraw.of(size, 11).scenario());
  }

  private static MiddlingSets searching(World world, Best best) {
    long end = System.nanoTime() + MILLIS * 1_000_000;
    return new MiddlingSets(
        world, best, () -> best.plan().isPresent() ? 0 : (end - System.nanoTime()) / 1_000_000);
  }

  @Test
  void suits_rooms_that_are_neither_small_nor_large() {
    for (RoomSize size : RoomSize.values()) {
      if (size.compareTo(RoomSize.M) <= 0) {
        World world = room(size);
        assertThat(searching(world, Best.in(world)).suits())
            .as(size.name())
            .isEqualTo(size == RoomSize.S);
      }
    }
  }

  @Test
  void finds_a_plan_by_itself() {
    World world = room(RoomSize.S);
    Best best = Best.in(world);
    searching(world, best).run();
    assertThat(best.plan()).isPresent();
    assertThat(best.plan().orElseThrow().books().breaches()).isEmpty();
  }

  /** What is asked for is met by parts of meals, so packs are enough for all but a little. */
  @Test
  void packs_are_found_with_which_nothing_lacks_but_for_rounding() {
    World world = World.of(RoomDraw.of(RoomSize.XS, 1).scenario());
    assertThat(LackingNothing.suits(world)).isTrue();
    Map<?, ?> packs =
        LackingNothing.packs(world, new Apart(), Scip.Budget.ofMillis(MILLIS), () -> false)
            .orElseThrow();
    assertThat(packs).isNotEmpty();
  }
}
