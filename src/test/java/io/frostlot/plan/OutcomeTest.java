package io.frostlot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.units.Litres;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the handmade plan comes to, counted by hand. */
class OutcomeTest {
  private final World world = HandmadeRoom.world();
  private final Plan plan = HandmadePlan.plan(world);
  private final Outcome outcome = Outcome.of(world, plan);

  private static LocalDate day(String day) {
    return LocalDate.parse(day);
  }

  private FreezerLoad freezer(String name) {
    return outcome.freezers().stream()
        .filter(load -> load.freezer().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void room_is_counted_after_the_delivery_and_before_meals() {
    // a mouse of 21 g takes 21 / 450 = 0.046667 l, a hopper of 10 g 0.022222 l
    assertThat(freezer("Kitchen").on(day("2031-01-06"))).isEqualTo(new Litres(18 * 46_667));
    assertThat(freezer("Chest").on(day("2031-01-12"))).isEqualTo(Litres.ZERO);
    assertThat(freezer("Chest").on(day("2031-01-15")))
        .isEqualTo(new Litres(25 * 46_667 + 54 * 22_222));
    // one hopper is eaten on the 16th, after the check of that day
    assertThat(freezer("Chest").on(day("2031-01-17")))
        .isEqualTo(new Litres(25 * 46_667 + 53 * 22_222));
    assertThat(freezer("Kitchen").peakDay()).isEqualTo(day("2031-01-06"));
    assertThat(freezer("Chest").byDay()).hasSize(56);
  }

  /**
   * The chest holds most from 10 February on: 25 adult mice at 20.50 / 25 = 0.82, 51 hoppers at
   * 14.25 / 25 = 0.57, which are 29.07, two single mice at 2.20; but before a hopper was eaten, on
   * 15 January, it held 54 hoppers and no single mouse, which is less.
   */
  @Test
  void what_is_at_risk_is_told_of_the_day_on_which_it_would_cost_most() {
    assertThat(outcome.dearest())
        .extracting(
            it -> it.freezer().name() + " " + it.day() + ": " + it.count() + ", " + it.worth())
        .containsExactly("Chest 2031-02-10: 78, 53.97", "Kitchen 2031-01-06: 18, 14.76");
  }

  @Test
  void what_is_past_its_use_by_takes_no_room() {
    assertThat(freezer("Kitchen").on(day("2031-03-01"))).isEqualTo(new Litres(5 * 46_667));
    assertThat(freezer("Kitchen").on(day("2031-03-02"))).isEqualTo(Litres.ZERO);
  }

  @Test
  void every_leftover_has_its_reason() {
    assertThat(outcome.leftovers())
        .extracting(it -> it.pieces() + " of " + it.lot().id() + " " + it.reason().id())
        .containsExactly(
            "5 of A1 past-use-by",
            "4 of P1 outgrown",
            "7 of O1 kept-for-later",
            "18 of O1 pack-size",
            "47 of O2 outgrown",
            "2 of O3 not-needed");
  }

  @Test
  void the_plan_can_be_followed() {
    assertThat(Replay.of(world, plan).breaches()).isEmpty();
  }

  @Test
  void no_piece_is_lost() {
    Map<String, Integer> pieces = new HashMap<>();
    outcome.leftovers().forEach(it -> pieces.merge(it.lot().id(), it.pieces(), Integer::sum));
    plan.discards().forEach(it -> pieces.merge(it.lotId(), it.pieces(), Integer::sum));
    plan.feedings().stream()
        .filter(it -> world.scenario().planning().contains(it.day()))
        .flatMap(it -> it.draws().stream())
        .forEach(it -> pieces.merge(it.lotId(), it.pieces(), Integer::sum));
    plan.lots()
        .forEach(lot -> assertThat(pieces.get(lot.id())).as(lot.id()).isEqualTo(lot.pieces()));
  }

  @Test
  void meals_that_are_not_met_are_named_with_the_nearest_item() {
    assertThat(outcome.missed())
        .extracting(it -> it.demand().meal().id() + " " + it.count() + " " + it.nearestItem())
        .containsExactly("Bark 2031-01-09 1 hillside/Hopper", "Open day 4 ");
  }

  @Test
  void without_options_the_nearest_item_of_an_accepted_kind_is_named() {
    // after 1 February Bark takes 17 to 27 g; only hoppers of 10 g are there
    Demand none =
        new Demand(
            world.demandsById().get("Bark 2031-02-06").meal(),
            List.of(),
            false,
            io.frostlot.units.Money.ZERO);
    World poor = new World(world.scenario(), List.of(none), world.slots(), world.items());
    assertThat(Outcome.of(poor, new Plan(List.of(), List.of(), List.of(), List.of())).missed())
        .extracting(Outcome.Missed::nearestItem)
        .containsExactly("corner/Mouse");
  }

  @Test
  void late_meals_are_named_with_their_day() {
    assertThat(outcome.late())
        .extracting(it -> it.demand().meal().id() + " on " + it.day())
        .containsExactly("Amber 2031-01-10 on 2031-01-11");
  }

  @Test
  void stock_is_counted_at_night() {
    Outcome.Stock hoppers = outcome.stock().get(2);
    assertThat(hoppers.item().id()).isEqualTo("hillside/Hopper");
    assertThat(hoppers.byDay().get(day("2031-01-15"))).isEqualTo(54);
    assertThat(hoppers.byDay().get(day("2031-01-16"))).isEqualTo(53);
  }
}
