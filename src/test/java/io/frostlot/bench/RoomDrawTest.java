package io.frostlot.bench;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.keeping.Schedule;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Supplier;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Drawn rooms have what the benchmark says of them. */
class RoomDrawTest {
  private static long promotions(Scenario room) {
    return room.suppliers().stream()
        .mapToLong(s -> s.sheet().sales().size() + s.terms().discounts().size())
        .sum();
  }

  private static long whole(List<Supplier> suppliers) {
    return suppliers.stream().filter(s -> s.boxing().way() == Boxing.Way.WHOLE_PACKS).count();
  }

  @ParameterizedTest
  @EnumSource(names = {"XS", "S", "M", "L"})
  void a_room_has_its_size_and_every_rule_in_use(RoomSize size) {
    Scenario room = RoomDraw.of(size, 11).scenario();
    List<Supplier> suppliers = room.suppliers();
    Policy policy = room.policy();

    assertThat(room.collection().animals()).hasSize(size.animals());
    assertThat(suppliers).hasSize(size.suppliers());
    assertThat(promotions(room)).isEqualTo(3);
    assertThat(whole(suppliers)).isEqualTo(1);
    assertThat(suppliers).anyMatch(s -> !s.terms().freeShipping().isEmpty());
    assertThat(suppliers).anyMatch(s -> !s.terms().minimum().equals(OrderTerms.Threshold.NONE));
    assertThat(suppliers).anyMatch(s -> s.terms().tax().onCharges());
    assertThat(suppliers).anyMatch(s -> !s.shipping().surcharges().isEmpty());
    assertThat(suppliers.stream().flatMap(s -> s.sheet().breaks().stream()))
        .extracting(PriceBreak::counting)
        .contains(PriceBreak.Counting.ALL_UNITS, PriceBreak.Counting.INCREMENTAL);
    assertThat(policy.tail().days()).isPositive();
    assertThat(policy.charges().holding().isZero()).isFalse();
    assertThat(policy.safety().coverDays()).isPositive();
    assertThat(policy.safety().margin().isZero()).isFalse();
    assertThat(room.larder().freezers()).extracting(Freezer::kind).contains("household", "deep");
  }

  @ParameterizedTest
  @EnumSource(names = {"XS", "S", "M"})
  void every_planned_meal_can_be_had_and_four_in_ten_animals_grow(RoomSize size) {
    DrawnRoom room = RoomDraw.of(size, 12);
    World world = World.of(room.scenario());

    assertThat(world.demands()).extracting(Demand::options).doesNotContain(List.of());
    assertThat(Realised.growing(room.scenario().collection().animals())).isBetween(0.35, 0.45);
  }

  @Test
  void the_same_seed_draws_the_same_room() {
    assertThat(RoomDraw.of(RoomSize.S, 5)).isEqualTo(RoomDraw.of(RoomSize.S, 5));
    assertThat(RoomDraw.of(RoomSize.S, 5)).isNotEqualTo(RoomDraw.of(RoomSize.S, 6));
  }

  @Test
  void as_much_is_eaten_in_the_second_closing_as_in_the_first() {
    DrawnRoom room = RoomDraw.of(RoomSize.M, 3);
    Scenario scenario = room.scenario();
    Appetite appetite = new Appetite(scenario.collection().animals(), scenario.planning());
    double first = appetite.kg(room.calibration().closings().get(0));
    double second = appetite.kg(room.calibration().closings().get(1));

    assertThat(second / first).isBetween(0.9, 1.1);
  }

  @Test
  void a_varied_room_has_about_ten_times_the_kinds_of_meal() {
    double times = (double) kinds(RoomSize.XXL) / kinds(RoomSize.XL);

    assertThat(times).isBetween(7.0, 13.0);
  }

  /** Feeding days of a week and leeways, each with each. */
  private static int kinds(RoomSize size) {
    Set<List<Object>> kinds =
        RoomDraw.of(size, 4).scenario().collection().animals().stream()
            .map(animal -> animal.programme())
            .map(
                programme ->
                    List.<Object>of(
                        ((Schedule.Every) programme.schedule()).first().getDayOfWeek(),
                        programme.days()))
            .collect(Collectors.toSet());
    return kinds.size();
  }
}
