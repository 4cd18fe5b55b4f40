package io.frostlot.bench;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Demand;
import io.frostlot.plan.Group;
import io.frostlot.plan.JointWorld;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawn groups have what the benchmark says of them. */
class GroupDrawTest {
  private static Group group(long seed) {
    return GroupDraw.of(5, RoomSize.MEMBER, seed).group();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void five_keepers_of_twelve_animals_plan_84_days_and_91_after(long seed) {
    Group group = group(seed);

    assertThat(group.keepers()).hasSize(5);
    for (Keeper keeper : group.keepers()) {
      Scenario scenario = keeper.scenario();
      assertThat(scenario.collection().animals()).hasSize(12);
      assertThat(ChronoUnit.DAYS.between(scenario.planning().from(), scenario.planning().to()))
          .isEqualTo(83);
      assertThat(scenario.policy().tail().days()).isEqualTo(91);
      assertThat(scenario.policy().charges().order().isZero()).isFalse();
      assertThat(scenario.larder().freezers())
          .extracting(Freezer::kind)
          .containsExactlyInAnyOrder("deep", "household");
      assertThat(scenario.larder().placed()).hasSize(1);
      assertThat(scenario.suppliers()).extracting(Supplier::isPickUp).containsOnlyOnce(true);
      assertThat(scenario.suppliers()).hasSize(3);
    }
  }

  /** What reading a group folder asks of a group: see the README on group.json. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void all_agree_on_what_a_group_has_in_common(long seed) {
    Group group = group(seed);
    Scenario first = group.first();

    assertThat(group.names()).doesNotHaveDuplicates();
    assertThat(group.names()).containsAll(group.agreement().hosts());
    for (Keeper keeper : group.keepers()) {
      assertThat(keeper.scenario().policy()).isEqualTo(first.policy());
      assertThat(keeper.scenario().planning()).isEqualTo(first.planning());
      assertThat(keeper.scenario().suppliers()).isEqualTo(first.suppliers());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void some_bags_that_are_sold_may_be_cut_and_some_may_not(long seed) {
    Group group = group(seed);
    List<Pack> shipped =
        group.first().suppliers().stream()
            .filter(supplier -> !supplier.isPickUp())
            .flatMap(supplier -> supplier.sheet().packs().stream())
            .toList();
    Set<String> sold = shipped.stream().map(Pack::id).collect(Collectors.toSet());

    assertThat(sold).containsAll(group.agreement().cutting().leastPieces().keySet());
    assertThat(shipped).anyMatch(group.agreement().cutting()::mayCut);
    assertThat(shipped).anyMatch(pack -> !group.agreement().cutting().mayCut(pack));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void stock_fits_and_every_meal_can_be_had(long seed) {
    Group group = group(seed);
    World world = JointWorld.of(group.keepers(), group.agreement()).orElseThrow();

    assertThat(world.demands()).extracting(Demand::options).doesNotContain(List.of());
    for (Keeper keeper : group.keepers()) {
      List<StockLot> stock = keeper.scenario().larder().stock();
      double litres =
          stock.stream().mapToDouble(lot -> lot.pieces() * lot.item().litres().toDouble()).sum();
      double room =
          keeper.scenario().larder().freezers().stream()
              .filter(freezer -> freezer.kind().equals("deep"))
              .mapToDouble(freezer -> freezer.usable().toDouble())
              .sum();
      assertThat(stock).isNotEmpty();
      assertThat(litres).isLessThanOrEqualTo(room);
    }
  }

  @Test
  void with_an_even_seed_the_others_collect_every_second_saturday() {
    TreeSet<LocalDate> days = new TreeSet<>(group(2).agreement().handOvers());

    assertThat(group(1).agreement().handOvers()).isEmpty();
    assertThat(days)
        .hasSize(6)
        .extracting(LocalDate::getDayOfWeek)
        .containsOnly(DayOfWeek.SATURDAY);
    assertThat(ChronoUnit.DAYS.between(days.first(), days.last())).isEqualTo(5 * 14);
    assertThat(group(2).first().planning().contains(days.last())).isTrue();
  }

  @Test
  void the_same_seed_draws_the_same_group() {
    assertThat(group(5)).isEqualTo(group(5));
    assertThat(group(5)).isNotEqualTo(group(6));
  }
}
