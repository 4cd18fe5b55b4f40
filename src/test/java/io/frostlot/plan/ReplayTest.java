package io.frostlot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.Option;
import io.frostlot.supply.Slot;
import io.frostlot.units.Litres;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The handmade plan can be followed; with one thing made wrong it cannot, and the day is named. */
class ReplayTest {
  private final World world = HandmadeRoom.world();
  private final Plan plan = HandmadePlan.plan(world);
  private final Replay replay = Replay.of(world, plan);

  private static LocalDate day(String day) {
    return LocalDate.parse("2031-" + day);
  }

  private static <T> List<T> changed(List<T> all, int index, UnaryOperator<T> change) {
    List<T> changed = new ArrayList<>(all);
    changed.set(index, change.apply(changed.get(index)));
    return changed;
  }

  private static <T> List<T> with(List<T> all, T one) {
    List<T> more = new ArrayList<>(all);
    more.add(one);
    return more;
  }

  private static <T> List<T> without(List<T> all, int index) {
    List<T> fewer = new ArrayList<>(all);
    fewer.remove(index);
    return fewer;
  }

  private List<String> withLots(List<Lot> lots) {
    return breaches(new Plan(plan.orders(), lots, plan.feedings(), plan.discards()));
  }

  private List<String> withLot(int index, UnaryOperator<Lot> change) {
    return withLots(changed(plan.lots(), index, change));
  }

  private List<String> withFeeding(int index, UnaryOperator<Feeding> change) {
    return breaches(
        new Plan(
            plan.orders(), plan.lots(), changed(plan.feedings(), index, change), plan.discards()));
  }

  private List<String> withDiscard(String lot, String day, int pieces) {
    return breaches(
        new Plan(
            plan.orders(),
            plan.lots(),
            plan.feedings(),
            with(plan.discards(), new Discard(lot, day(day), pieces))));
  }

  private List<String> breaches(Plan wrong) {
    return Replay.of(world, wrong).breaches();
  }

  private static Lot moved(Lot lot, String freezer, LocalDate useBy) {
    return new Lot(
        lot.id(),
        lot.item(),
        lot.pieces(),
        freezer,
        lot.earliest(),
        lot.latest(),
        useBy,
        lot.origin());
  }

  @Test
  void the_handmade_plan_can_be_followed() {
    assertThat(replay.breaches()).isEmpty();
  }

  @Test
  void room_left_pieces_and_unmet_meals_agree_with_the_outcome_counted_by_hand() {
    Outcome outcome = Outcome.of(world, plan);
    assertThat(replay.freezers()).isEqualTo(outcome.freezers());
    assertThat(replay.freezers().get(0).on(day("01-15")))
        .isEqualTo(new Litres(25 * 46_667 + 54 * 22_222));
    // 4 under way; 25 bought, 7 eaten in the tail; 50 bought, 3 eaten; 2 bought
    assertThat(replay.leftovers())
        .extracting(left -> left.pieces() + " of " + left.lot().id())
        .containsExactly("4 of P1", "25 of O1", "47 of O2", "2 of O3");
    // 18, one thrown away, 12 eaten, the last usable day is 1 March
    assertThat(replay.pastUseBy())
        .extracting(left -> left.pieces() + " of " + left.lot().id() + " on " + left.leaves())
        .containsExactly("5 of A1 on 2031-03-02");
    assertThat(replay.unmet().stream().mapToInt(Replay.Unmet::meals).sum())
        .isEqualTo(outcome.missed().stream().mapToInt(Outcome.Missed::count).sum());
  }

  @Test
  void every_piece_lies_in_one_lot() {
    assertThat(withLots(without(plan.lots(), 0)))
        .contains(
            "2031-01-06: 18 pieces of hillside/Adult mouse that came are in no lot (InHand[stockLot=A1]).");
    assertThat(withLots(without(plan.lots(), 1)))
        .singleElement()
        .asString()
        .startsWith("2031-01-06: 4 pieces of hillside/Hopper");
    assertThat(withLots(without(plan.lots(), 4)))
        .singleElement()
        .asString()
        .startsWith("2031-02-10: 2 pieces of corner/Mouse");
    assertThat(withLots(with(plan.lots(), plan.lots().get(4)))).hasSize(2);
  }

  @Test
  void a_lot_may_be_split_over_freezers() {
    Lot all = plan.lots().get(4);
    Lot one =
        new Lot(
            "O3", all.item(), 1, "Chest", all.earliest(), all.latest(), all.useBy(), all.origin());
    Lot other =
        new Lot(
            "O4",
            all.item(),
            1,
            "Kitchen",
            all.earliest(),
            all.latest(),
            all.earliest().plusDays(90),
            all.origin());
    assertThat(withLots(with(changed(plan.lots(), 4, lot -> one), other))).isEmpty();
  }

  @Test
  void use_by_follows_from_the_freezer_and_the_earliest_arrival() {
    assertThat(withLot(3, lot -> moved(lot, "Chest", lot.useBy().plusDays(1))))
        .containsExactly("2031-01-15: lot O2 is to be used by 2031-07-15, not 2031-07-16.");
    assertThat(withLot(4, lot -> moved(lot, "Kitchen", lot.useBy())))
        .containsExactly("2031-02-10: lot O3 is to be used by 2031-05-11, not 2031-08-10.");
    assertThat(withLot(0, lot -> moved(lot, "Kitchen", lot.useBy().plusDays(1))))
        .singleElement()
        .asString()
        .startsWith("2030-12-01: lot A1 is not as it lies there");
    assertThat(withLot(4, lot -> moved(lot, "Cellar", lot.useBy())))
        .containsExactly("2031-02-10: lot O3 lies in a freezer that there is not, Cellar.");
  }

  @Test
  void nothing_is_eaten_before_its_latest_arrival_or_after_its_use_by() {
    // the hoppers of the first order come on the 15th or the 16th, the first is eaten on the 16th
    assertThat(withFeeding(1, f -> new Feeding(f.mealId(), day("01-15"), f.option(), 1, f.draws())))
        .contains(
            "2031-01-15: eaten by Bark 2031-01-16: 1 pieces of lot O2, of which 0 are there.");
    assertThat(
            withFeeding(
                plan.feedings().size() - 1,
                f ->
                    new Feeding(
                        f.mealId(), f.day(), f.option(), 1, List.of(new Feeding.Draw("A1", 1)))))
        .containsExactly(
            "2031-03-28: eaten by Amber 2031-03-28: 1 pieces of lot A1, of which 0 are there.");
  }

  @Test
  void nothing_is_thrown_away_that_is_not_there() {
    assertThat(withDiscard("O2", "01-16", 1))
        .containsExactly("2031-01-16: thrown away: 1 pieces of lot O2, of which 0 are there.");
    assertThat(withDiscard("O2", "01-17", 47)).isEmpty();
    assertThat(withDiscard("O2", "01-17", 48))
        .containsExactly(
            "2031-01-30: eaten by Bark 2031-01-30: 1 pieces of lot O2, of which 0 are there.");
  }

  @Test
  void a_meal_is_served_on_its_days_by_an_option_no_more_often_than_it_is_there() {
    Option two = new Option(HandmadeRoom.ADULT, 2);
    assertThat(
            withFeeding(
                0,
                f -> new Feeding(f.mealId(), f.day(), two, 1, List.of(new Feeding.Draw("A1", 2)))))
        .singleElement()
        .asString()
        .startsWith("2031-01-11: Amber 2031-01-10 is served by what would not do");
    assertThat(withFeeding(0, f -> new Feeding(f.mealId(), day("01-14"), f.option(), 1, f.draws())))
        .containsExactly("2031-01-14: Amber 2031-01-10 is served outside its days.");
    assertThat(
            withFeeding(
                0,
                f ->
                    new Feeding(
                        f.mealId(), f.day(), f.option(), 2, List.of(new Feeding.Draw("A1", 2)))))
        .containsExactly("2031-01-11: Amber 2031-01-10 is served 2 times, it is 1 meals.");
    assertThat(
            withFeeding(
                0,
                f ->
                    new Feeding(
                        f.mealId(), f.day(), f.option(), 1, List.of(new Feeding.Draw("A1", 2)))))
        .containsExactly("2031-01-11: Amber 2031-01-10 takes 2 pieces instead of 1.");
    assertThat(withFeeding(0, f -> new Feeding("Cole", f.day(), f.option(), 1, f.draws())))
        .containsExactly("2031-01-11: Cole is no meal.");
  }

  @Test
  void one_order_a_day_from_a_supplier_on_a_possible_delivery() {
    Order first = plan.orders().get(0);
    Slot slot = first.slot();
    Slot sooner =
        new Slot(slot.supplier(), slot.ordered(), slot.ships(), slot.ships(), slot.ships());
    Order second = new Order(sooner, List.of(), first.promotions(), first.boxes());
    assertThat(
            breaches(
                new Plan(
                    with(plan.orders(), second), plan.lots(), plan.feedings(), plan.discards())))
        .containsExactlyInAnyOrder(
            "2031-01-12: hillside has no such delivery.",
            "2031-01-12: a second order from hillside.");
  }

  @Test
  void a_freezer_is_checked_when_something_comes() {
    // on 10 February (25 + n) x 46,667 + (4 + 47) x 22,222 + 2 x 48,889: n = 12 takes 2.957779 l
    assertThat(withLot(2, lot -> bigger(lot, 12)))
        .singleElement()
        .asString()
        .contains("12 pieces of hillside/Adult mouse more than came");
    assertThat(withLot(2, lot -> bigger(lot, 13)))
        .hasSize(2)
        .contains("2031-02-10: 3.004446 l in freezer Chest, which holds 3 l.");
  }

  private static Lot bigger(Lot lot, int more) {
    return new Lot(
        lot.id(),
        lot.item(),
        lot.pieces() + more,
        lot.freezer(),
        lot.earliest(),
        lot.latest(),
        lot.useBy(),
        lot.origin());
  }
}
