package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.DueSoon;
import io.frostlot.plan.EarlierOrders;
import io.frostlot.plan.Outline;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.PlacedLot;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop that is open on Wednesdays, the first of them the first planning day, 1 January. */
class EarlierOrdersTest {
  private static final LocalDate FIRST = LocalDate.of(2031, 1, 1);
  @TempDir private Path folder;
  private World world;

  @BeforeEach
  void read() {
    world = new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(60, 10)).world(folder);
  }

  private static Outline.Ordered mice(String supplier, int day, String pack) {
    LocalDate date = FIRST.plusDays(day - 1L);
    return new Outline.Ordered(supplier, date, date, new TreeMap<>(Map.of(pack, 3)), Money.of(3));
  }

  private static Outline.Ordered mice(int day) {
    return mice("shop", day, "Mouse x1");
  }

  private EarlierOrders of(Outline.Ordered... orders) {
    Outline.Totals totals = new Outline.Totals(Money.of(3), Money.of(3));
    return EarlierOrders.of(world, new Outline("", totals, List.of(orders), List.of()));
  }

  private void with(Scenario other) {
    world = world.withScenario(other);
  }

  @Test
  void orders_of_the_first_two_weeks_are_due_soon() {
    EarlierOrders orders = of(mice(22), mice(15), mice(1));
    DueSoon dueSoon = orders.dueSoon();
    assertThat(dueSoon.dates()).isEqualTo(new Period(FIRST, FIRST.plusDays(14)));
    assertThat(dueSoon.charge()).isEqualTo(Money.of(5));
    assertThat(dueSoon.orders())
        .extracting(due -> due.slot().ordered())
        .containsExactly(FIRST, FIRST.plusDays(14));
    assertThat(dueSoon.orders().get(0).packs()).isEqualTo(Map.of("Mouse x1", 3));
    assertThat(orders.leftOut()).isEmpty();
  }

  @Test
  void nothing_is_due_soon_where_anything_may_change() {
    for (Policy.Calm calm :
        List.of(new Policy.Calm(0, Money.of(5)), new Policy.Calm(9, Money.ZERO))) {
      Policy policy = world.scenario().policy();
      Policy.Ordering ordering = new Policy.Ordering(policy.ordering().budget(), calm);
      with(world.scenario().withPolicy(policy.withOrdering(ordering)));
      assertThat(of(mice(1))).isEqualTo(new EarlierOrders(DueSoon.NONE, List.of()));
    }
  }

  @Test
  void what_is_placed_is_not_counted_and_needs_no_word() {
    Scenario.Larder larder = world.scenario().larder();
    LocalDate second = FIRST.plusDays(7);
    PlacedLot placed =
        new PlacedLot("box", world.items().get("shop/Mouse"), 3, second, second.plusDays(1));
    with(
        world
            .scenario()
            .withLarder(new Scenario.Larder(larder.freezers(), larder.stock(), List.of(placed))));
    EarlierOrders orders = of(mice(1), mice(8));
    assertThat(orders.dueSoon().orders())
        .extracting(due -> due.slot().ordered())
        .containsExactly(FIRST);
    assertThat(orders.leftOut()).isEmpty();
  }

  @Test
  void what_has_come_needs_no_word_and_what_should_be_under_way_does() {
    Outline.Ordered late =
        new Outline.Ordered(
            "shop", FIRST.minusDays(2), FIRST, new TreeMap<>(Map.of("Mouse x1", 3)), Money.of(3));
    EarlierOrders orders = of(mice(-6), late);
    assertThat(orders.dueSoon().orders()).isEmpty();
    assertThat(orders.leftOut())
        .containsExactly(
            "The earlier plan's order from Shop (invented) by 2030-12-30 is not kept: its day is"
                + " past. If it was placed, write it into placed.csv.");
  }

  @Test
  void what_can_be_neither_kept_nor_changed_is_named() {
    assertThat(of(mice("stall", 1, "Mouse x1"), mice(2), mice("shop", 8, "Rat x1")).leftOut())
        .containsExactly(
            "The earlier plan's order from stall by 2031-01-01 is not kept: the scenario has no"
                + " such supplier.",
            "The earlier plan's order from Shop (invented) by 2031-01-02 is not kept: it cannot be"
                + " ordered or received on its days now.",
            "The earlier plan's order from Shop (invented) by 2031-01-08 is not kept: the price"
                + " sheet has no Rat x1 now.");
  }
}
