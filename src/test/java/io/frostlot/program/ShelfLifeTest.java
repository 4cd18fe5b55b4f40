package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.Faces.unmet;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.freezer;
import static io.frostlot.program.SmallWorld.pack;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Lot;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Grams;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single pieces at 2.00, to be had on day 1 only. */
class ShelfLifeTest {
  private static final String RULE = "shelf-life";
  private static final Delivery DAY_ONE =
      new Delivery.Show(new Delivery.Lead(0, false, 0, List.of()), List.of(day(1)));

  private static SmallWorld dayOne(Pack... packs) {
    return new SmallWorld(9, SmallSupplier.selling(packs).delivery(DAY_ONE));
  }

  private static SmallWorld threeDays(int mealDay) {
    return dayOne(SINGLE).freezers(freezer("A", "10", Freezer.Life.of(3))).need(mealDay, 1);
  }

  private static ByHand bought(SmallWorld world) {
    return new ByHand(world.world()).order(1, packs(SINGLE, 1));
  }

  /** Three days with the day of arrival: the last is day 3. */
  @Test
  void a_piece_is_eaten_on_its_last_day_and_not_after() {
    allowed(bought(threeDays(3)).eat("day 3", "O1"), "2");
    assertThat(optimum(threeDays(3))).isEqualTo(costs("2"));
    refused(bought(threeDays(4)).eat("day 4", "O1"), RULE);
    assertThat(optimum(threeDays(4))).isEqualTo(unmet(1, "0"));
  }

  @Test
  void use_by_is_as_the_freezer_says() {
    ByHand plan = bought(threeDays(3)).eat("day 3", "O1");
    Lot lot = plan.lot("O1");
    for (int useBy : new int[] {2, 4}) {
      Lot other =
          new Lot(
              lot.id(),
              lot.item(),
              lot.pieces(),
              lot.freezer(),
              lot.earliest(),
              lot.latest(),
              day(useBy),
              lot.origin());
      refused(plan.put(other), RULE);
    }
  }

  @Test
  void what_has_left_is_not_thrown_away() {
    allowed(bought(threeDays(1)).discard("O1", 3, 1), "2");
    refused(bought(threeDays(1)).discard("O1", 4, 1), RULE);
  }

  /** Comes on day 1 or 2; three days from day 1. */
  @ParameterizedTest(name = "a meal on day {0}: {1} not met")
  @CsvSource({"3, 0", "4, 1"})
  void life_is_counted_from_the_earliest_arrival(int mealDay, int notMet) {
    SmallWorld world =
        new SmallWorld(9)
            .freezers(freezer("A", "10", Freezer.Life.of(3)))
            .placed(new PlacedLot("P", MOUSE, 1, day(1), day(2)))
            .need(mealDay, 1);
    assertThat(optimum(world)).isEqualTo(unmet(notMet, "0"));
  }

  @Test
  void what_is_in_hand_is_eaten_until_its_own_use_by() {
    SmallWorld inTime = new SmallWorld(9).stock("S", 1, 4).need(4, 1);
    allowed(new ByHand(inTime.world()).eat("day 4", "S"), "0");
    assertThat(optimum(inTime)).isEqualTo(costs("0"));
    SmallWorld late = new SmallWorld(9).stock("S", 1, 4).need(5, 1);
    refused(new ByHand(late.world()).eat("day 5", "S"), RULE);
    assertThat(optimum(late)).isEqualTo(unmet(1, "0"));
  }

  /** The piece that lasts until day 2 is eaten first, so both meals are met for nothing. */
  @Test
  void the_oldest_is_eaten_first() {
    SmallWorld world = new SmallWorld(9).stock("S", 1, 5).stock("T", 1, 2).need(2, 1).need(5, 1);
    allowed(new ByHand(world.world()).eat("day 2", "T").eat("day 5", "S"), "0");
    assertThat(optimum(world)).isEqualTo(costs("0"));
  }

  /** Below 20 g prey keeps two days, from 20 g on five. */
  @ParameterizedTest(name = "{0} g, a meal on day {1}: {2} not met")
  @CsvSource({"19, 2, 0", "19, 3, 1", "20, 5, 0", "20, 6, 1"})
  void small_prey_has_a_life_of_its_own(int grams, int mealDay, int notMet) {
    Item small = prey("Small", "mouse", grams);
    Freezer.Life lives = new Freezer.Life(5, Grams.of(20), 2);
    SmallWorld world =
        dayOne(pack(small, 1, "2.00")).freezers(freezer("A", "10", lives)).need(small, mealDay, 1);
    assertThat(optimum(world)).isEqualTo(unmet(notMet, notMet == 0 ? "2" : "0"));
  }

  /** A litre each: what is eaten on day 2 lies in A, what is eaten on day 5 in B. */
  @Test
  void life_follows_from_the_freezer() {
    SmallWorld world =
        dayOne(SINGLE)
            .freezers(freezer("A", "1", Freezer.Life.of(2)), freezer("B", "1", Freezer.Life.of(5)))
            .need(2, 1)
            .need(5, 1);
    assertThat(optimum(world)).isEqualTo(costs("4"));
    SmallWorld later =
        dayOne(SINGLE)
            .freezers(freezer("A", "1", Freezer.Life.of(2)), freezer("B", "1", Freezer.Life.of(5)))
            .need(3, 1)
            .need(5, 1);
    assertThat(optimum(later)).isEqualTo(unmet(1, "2"));
  }
}
