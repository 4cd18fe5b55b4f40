package io.frostlot.program;

import static io.frostlot.program.Faces.best;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.day;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Standing;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bags of five mice of 16, 20 or up to 28 g, at 5.00: half of the smaller of 4 and 8 g is 2 g. */
class SortedBagsTest {
  private static final Item MOUSE =
      new Item(
          SmallWorld.SOURCE + "/Mouse",
          "Mouse",
          "mouse",
          "",
          new Item.Spread(Grams.of(16), Grams.of(20), Grams.of(28), false),
          Litres.of(BigDecimal.ONE));

  private static final Pack BAG = SmallWorld.pack(MOUSE, 5, "5.00");

  /** Mice of 15 to so many grams, no piece heavier. */
  private static Need need(String label, int leastG, int mostG, int pieces) {
    Meal.Days days = new Meal.Days(day(2), day(2), day(2));
    return new Need(label, "mouse", Grams.of(leastG), Grams.of(mostG), pieces, days);
  }

  private static SmallWorld world(Pack pack, Need... needs) {
    SmallWorld world = new SmallWorld(3, SmallSupplier.selling(pack));
    for (Need need : needs) {
      world.need(need);
    }
    return world;
  }

  @Test
  void a_bag_comes_apart_at_its_mean() {
    assertThat(BAG.sortedAtHome().parts())
        .satisfiesExactly(
            lighter -> {
              assertThat(lighter.pieces()).isEqualTo(2);
              assertThat(lighter.item().grams())
                  .isEqualTo(new Item.Spread(Grams.of(16), Grams.of(18), Grams.of(20), false));
              // 18 g of 20 g take 0.9 l
              assertThat(lighter.item().litres()).isEqualTo(new Litres(900_000));
            },
            heavier -> {
              assertThat(heavier.pieces()).isEqualTo(3);
              assertThat(heavier.item().grams())
                  .isEqualTo(new Item.Spread(Grams.of(20), Grams.of(22), Grams.of(28), false));
            });
  }

  @Test
  void what_cannot_be_told_apart_is_not_sorted() {
    Pack alike = SmallWorld.pack(SmallWorld.MOUSE, 5, "5.00");
    assertThat(alike.sortedAtHome()).isEqualTo(alike);
    Pack single = SmallWorld.pack(MOUSE, 1, "1.00");
    assertThat(single.sortedAtHome()).isEqualTo(single);
  }

  /** A piece of up to 28 g is too large where 20 g are the most; of the lighter half none is. */
  @Test
  void the_largest_piece_is_that_of_the_half() {
    Need hatchlings = need("small", 15, 20, 2);
    assertThat(optimum(world(BAG, hatchlings))).isEqualTo(new Standing(2, 0, 0, Money.ZERO));
    assertThat(optimum(world(BAG.sortedAtHome(), hatchlings))).isEqualTo(costs("5"));
  }

  /**
   * Two lighter and three heavier a bag: for the larger number of bags that either half asks for.
   */
  @ParameterizedTest(name = "{0} small, {1} large: {2}")
  @CsvSource({"2, 3, 5", "3, 3, 10", "2, 4, 10", "1, 7, 15", "6, 1, 15"})
  void each_half_has_its_pieces(int small, int large, String money) {
    SmallWorld world =
        world(BAG.sortedAtHome(), need("small", 15, 20, small), need("large", 21, 28, large));
    assertThat(optimum(world)).isEqualTo(costs(money));
  }

  /** All pieces of the bag lie somewhere, whichever half they are of. */
  @Test
  void both_halves_come_into_the_freezer() {
    Plan plan = best(world(BAG.sortedAtHome(), need("small", 15, 20, 2)).world()).plan();
    assertThat(plan.lots())
        .extracting(lot -> lot.item().name(), Lot::pieces)
        .containsExactlyInAnyOrder(
            tuple("Mouse, lighter half", 2), tuple("Mouse, heavier half", 3));
  }
}
