package io.frostlot.program;

import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.bench.RoomDraw;
import io.frostlot.bench.RoomSize;
import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What is found beside some packs, and how far it may be from them. */
class NearPacksTest {
  private static final Pack BAG = SmallWorld.pack(MOUSE, 5, "6.00");

  private static Optional<Answer.Judged> near(World world, Answer.Judged plan) {
    return Attempt.near(
        plan, new Judging(world, new Apart()), Scip.Budget.ofMillis(20_000), () -> false);
  }

  /** Buys the same in its first order as another plan, whatever that is worth. */
  private static Answer.Judged buying(World world, Map<Pack, Integer> packs) {
    Slot slot = world.slots().get(0);
    Attempt attempt = new Attempt(world.withSlots(List.of(slot)), new Judging(world, new Apart()));
    double[] point = attempt.pointOf(Map.of(slot, packs), Scip.Budget.ofMillis(20_000));
    return attempt.finish(point, OptionalInt.empty()).orElseThrow();
  }

  /**
   * Five mice are wanted. A bag and three mice are 6.00 + 3 x 2.00; two mice less are near, 8.00,
   * and from there one less, 6.00, where nothing is better.
   */
  @Test
  void two_packs_of_a_row_more_or_less_are_near_and_no_others() {
    World world = new SmallWorld(7, SmallSupplier.selling(SINGLE, BAG)).need(5, 5).world();
    Answer.Judged begun = buying(world, Map.of(SINGLE, 3, BAG, 1));
    assertThat(begun.standing()).isEqualTo(costs("12"));
    Answer.Judged once = near(world, begun).orElseThrow();
    assertThat(once.standing()).isEqualTo(costs("8"));
    Answer.Judged twice = near(world, once).orElseThrow();
    assertThat(twice.standing()).isEqualTo(costs("6"));
    assertThat(near(world, twice)).isEmpty();
  }

  /** Five mice at 2.00 each; the bag for 6.00 is a row that is not bought of. */
  @Test
  void a_row_that_is_not_bought_of_stays_out() {
    World world = new SmallWorld(7, SmallSupplier.selling(SINGLE, BAG)).need(5, 5).world();
    Answer.Judged begun = buying(world, Map.of(SINGLE, 5));
    assertThat(begun.standing()).isEqualTo(costs("10"));
    assertThat(near(world, begun)).isEmpty();
  }

  @Test
  void of_a_drawn_room_a_better_plan_with_the_same_rows_is_found() {
    World world = World.of(RoomDraw.of(RoomSize.XS, 3).scenario());
    Answer.Judged begun = new AtOnce(world, OptionalInt.of(1)).plan(world.slots()).orElseThrow();
    Answer.Judged found = near(world, begun).orElseThrow();
    assertThat(found.standing()).isLessThan(begun.standing());
    Map<Slot, Map<Pack, Integer>> before = new HashMap<>(begun.plan().packs());
    new LittleOrders(world)
        .inTimeFor(begun)
        .forEach(slot -> before.put(slot, found.plan().packs().getOrDefault(slot, Map.of())));
    found
        .plan()
        .packs()
        .forEach(
            (slot, packs) ->
                packs.forEach(
                    (pack, count) -> {
                      assertThat(before.get(slot)).containsKey(pack);
                      assertThat(Math.abs(count - before.get(slot).get(pack)))
                          .isLessThanOrEqualTo(2);
                    }));
  }
}
