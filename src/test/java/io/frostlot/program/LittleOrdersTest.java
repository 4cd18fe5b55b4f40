package io.frostlot.program;

import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Slot;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A shop, and a carrier that takes 29.00 for the first box; mice are wanted on two days. */
class LittleOrdersTest {
  private static final Pack SENT = SmallWorld.pack(SmallWorld.prey("Sent", "mouse", 25), 5, "5.00");

  private static World world() {
    SmallSupplier carrier =
        SmallSupplier.named("carrier", SENT)
            .delivery(SmallSupplier.CARRIER)
            .shipping(
                new Shipping(
                    new Shipping.Rate(Money.ZERO, Money.of(29), Money.of(10)),
                    new Shipping.Packing(Money.ZERO, Money.ZERO),
                    List.of(),
                    List.of()));
    return new SmallWorld(9, carrier, SmallSupplier.named("shop", SINGLE))
        .need(MOUSE, 4, 2)
        .need(MOUSE, 8, 2)
        .world();
  }

  private static Slot slot(World world, String supplier, int day) {
    return world.slots().stream()
        .filter(it -> it.supplier().equals(supplier) && it.arrivesEarliest().equals(day(day)))
        .findFirst()
        .orElseThrow();
  }

  private static Answer.Judged buying(World world, Slot slot, Map<Pack, Integer> packs) {
    Attempt attempt = new Attempt(world.withSlots(List.of(slot)), new Judging(world, new Apart()));
    double[] point = attempt.pointOf(Map.of(slot, packs), Scip.Budget.ofMillis(20_000));
    return attempt.finish(point, OptionalInt.empty()).orElseThrow();
  }

  @Test
  void the_last_of_the_shop_before_a_day_on_which_something_is_lacking() {
    World world = world();
    Answer.Judged late = buying(world, slot(world, "carrier", 6), Map.of(SENT, 1));
    assertThat(late.standing().unmet()).isEqualTo(2);
    assertThat(new LittleOrders(world).inTimeFor(late)).containsExactly(slot(world, "shop", 3));
    Answer.Judged all = buying(world, slot(world, "carrier", 2), Map.of(SENT, 1));
    assertThat(all.standing().lacksNothing()).isTrue();
    assertThat(new LittleOrders(world).inTimeFor(all)).isEmpty();
  }

  @Test
  void a_set_is_wider_by_each_of_the_shop() {
    World world = world();
    LittleOrders little = new LittleOrders(world);
    Set<Slot> sent = Set.of(slot(world, "carrier", 2));
    assertThat(little.isWithout(sent)).isTrue();
    assertThat(little.added(sent))
        .hasSize(9)
        .contains(Set.of(slot(world, "carrier", 2), slot(world, "shop", 9)));
    assertThat(little.isWithout(Set.of(slot(world, "shop", 9)))).isFalse();
  }

  /** What is lacking is bought beside a plan's own packs: 29 + 5, and 2 x 2.00 at the shop. */
  @Test
  void what_lies_near_has_a_little_order_for_what_is_lacking() {
    World world = world();
    Answer.Judged late = buying(world, slot(world, "carrier", 6), Map.of(SENT, 1));
    Answer.Judged found =
        Attempt.near(
                late, new Judging(world, new Apart()), Scip.Budget.ofMillis(20_000), () -> false)
            .orElseThrow();
    assertThat(found.standing().lacksNothing()).isTrue();
    assertThat(found.standing()).isLessThan(late.standing());
    assertThat(found.plan().packs().get(slot(world, "shop", 3))).containsEntry(SINGLE, 2);
  }
}
