package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.freezer;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Replay;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prey moved between freezers; a mouse takes a litre and costs 2.00, moving it 0.10. */
class MovesTest {
  private static Freezer holds(String name, String litres, int life) {
    return freezer(name, litres, Freezer.Life.of(life));
  }

  private static SmallWorld shop(int days, String way) {
    Shipping trip =
        new Shipping(
            Shipping.Rate.FREE,
            Shipping.Packing.FREE,
            List.of(),
            List.of(new Shipping.OrderCharge(Period.ALWAYS, Money.of(way))));
    return new SmallWorld(days, SmallSupplier.selling(SINGLE).shipping(trip));
  }

  private static StockLot inHand(int useBy) {
    return new StockLot("L", MOUSE, 1, "A", day(-3), Keeps.until(day(useBy)));
  }

  /**
   * The published wording of the rule for the shares: four of six months used leave a third of the
   * life of the other freezer (common practice). 60 of 180 days left are 30 of 90.
   */
  @ParameterizedTest(name = "{0} days left of {1}, moved to one of {2}: {3}")
  @CsvSource({
    "60, 180, 90, 30",
    "3, 4, 8, 6",
    "1, 3, 5, 1",
    "2, 3, 5, 3",
    "1, 5, 4, 0",
    "0, 5, 9, 0"
  })
  void the_share_of_life_that_is_left_is_left_there_too(int left, int from, int into, int kept) {
    Keeps there = Keeps.until(day(10 + left - 1));
    Keeps here = holds("B", "9", into).keepsMoved(MOUSE, holds("A", "9", from), there, day(10));
    assertThat(here.useBy()).isEqualTo(day(10 + kept - 1));
  }

  /** Two days left of four on day 1: in B four of eight, so up to and with day 4. */
  @ParameterizedTest(name = "eaten on day {0}: {1}")
  @CsvSource({"2, 0", "3, 0.10", "4, 0.10", "5, 5.00"})
  void prey_in_hand_is_moved_where_it_keeps_longer_and_costs_less(int eaten, String money) {
    SmallWorld world =
        shop(9, "3")
            .freezers(holds("A", "9", 4), holds("B", "9", 8))
            .stock(inHand(2))
            .moves(9, "0.10")
            .need(eaten, 1);
    assertThat(optimum(world)).isEqualTo(costs(money));
  }

  @Test
  void nothing_is_moved_unless_the_keeper_allows_it() {
    SmallWorld world =
        shop(9, "3").freezers(holds("A", "9", 4), holds("B", "9", 8)).stock(inHand(2)).need(4, 1);
    assertThat(optimum(world)).isEqualTo(costs("5"));
  }

  /**
   * B keeps twice as long, but is full on day 1. What lies there is moved to A, where its two days
   * of eight are one of four, and is eaten that day; what comes then into B lasts until day 8. For
   * day 9 there is a second way to the shop.
   */
  @ParameterizedTest(name = "eaten on day {0}: {1}")
  @CsvSource({"4, 7.00", "6, 7.10", "8, 7.10", "9, 10.00"})
  void room_is_made_in_the_better_freezer(int eaten, String money) {
    StockLot inB = new StockLot("L", MOUSE, 1, "B", day(-3), Keeps.until(day(2)));
    SmallWorld world =
        shop(9, "3")
            .freezers(holds("A", "9", 4), holds("B", "1", 8))
            .stock(inB)
            .moves(2, "0.10")
            .need(1, 2)
            .need(eaten, 1);
    assertThat(optimum(world)).isEqualTo(costs(money));
  }

  private static World world() {
    return shop(9, "3")
        .freezers(holds("A", "1", 4), holds("B", "1", 8))
        .moves(2, "0.10")
        .need(6, 1)
        .world();
  }

  private static Plan moved(LocalDate day, LocalDate useBy) {
    ByHand hand = new ByHand(world()).order(1, packs(SINGLE, 1)).eat("day 6", "O1");
    Plan plan = hand.plan();
    Lot lot = plan.lots().get(0);
    return new Plan(
        plan.orders(),
        List.of(lot.stayedUntil(day(4)).movedInto("B", day, useBy)),
        plan.feedings(),
        plan.discards());
  }

  /** Days 1, 3, 5, 7 and 9 are moving days; on its own day it does not lie there yet. */
  @ParameterizedTest(name = "moved on day {0}, use by day {1}: {2}")
  @CsvSource({"3, 6, true", "3, 7, false", "2, 7, false", "1, 8, false", "5, 4, false"})
  void rules_and_replay_refuse_what_may_not_be_moved(int day, int useBy, boolean holds) {
    Plan plan = moved(day(day), day(useBy));
    assertThat(Rules.judge(world(), plan).books().breaches().isEmpty()).isEqualTo(holds);
    assertThat(Replay.of(world(), plan).holds()).isEqualTo(holds);
  }

  @Test
  void a_plan_says_from_where_and_when() {
    SmallWorld world =
        shop(9, "3")
            .freezers(holds("A", "9", 4), holds("B", "9", 8))
            .stock(inHand(2))
            .moves(9, "0.10")
            .need(4, 1);
    Answer answer = Engine.solve(world.world(), Limits.ofSeconds(30), Watch.NONE);
    Lot lot = ((Answer.Proven) answer).plan().plan().lots().get(0);
    assertThat(lot.freezerOn(day(1).minusDays(1))).isEqualTo("A");
    assertThat(lot.freezerOn(day(1))).isEqualTo("B");
    assertThat(lot.move()).isEqualTo(new Lot.Move("A", day(1)));
  }
}
