package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.pack;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.storage.Freezer;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.units.Money;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single mice at 2.00, from five packs on 1.80, from ten on 1.50. */
class PriceBreaksTest {
  private static SmallWorld world(int days, PriceBreak.Counting counting) {
    PriceBreak steps =
        new PriceBreak(
            SINGLE.id(),
            counting,
            List.of(
                new PriceBreak.Step(5, Money.of("1.80")),
                new PriceBreak.Step(10, Money.of("1.50"))));
    return new SmallWorld(days, SmallSupplier.selling(SINGLE).breaks(steps));
  }

  /** The step is reached at its number exactly; nine are dearer than ten at 15.00. */
  @ParameterizedTest(name = "{0} packs {1}, least {2}")
  @CsvSource({
    "4, 8.00, 8.00",
    "5, 9.00, 9.00",
    "8, 14.40, 14.40",
    "9, 16.20, 15.00",
    "10, 15.00, 15.00",
    "11, 16.50, 16.50"
  })
  void all_packs_cost_what_the_step_says(int packs, String price, String least) {
    SmallWorld world = world(1, PriceBreak.Counting.ALL_UNITS).need(1, packs);
    allowed(new ByHand(world.world()).order(1, packs(SINGLE, packs)).eat("day 1", "O1"), price);
    assertThat(optimum(world)).isEqualTo(costs(least));
  }

  /** Four at 2.00, the fifth to the ninth at 1.80, the rest at 1.50. */
  @ParameterizedTest(name = "{0} packs {1}")
  @CsvSource({"4, 8.00", "5, 9.80", "9, 17.00", "10, 18.50", "12, 21.50"})
  void each_pack_costs_what_its_own_step_says(int packs, String price) {
    SmallWorld world = world(1, PriceBreak.Counting.INCREMENTAL).need(1, packs);
    allowed(new ByHand(world.world()).order(1, packs(SINGLE, packs)).eat("day 1", "O1"), price);
    assertThat(optimum(world)).isEqualTo(costs(price));
  }

  /** Prey keeps a day, so three packs and two are two orders, both below five: 6.00 + 4.00. */
  @Test
  void packs_of_two_orders_do_not_add_up() {
    SmallWorld world =
        world(2, PriceBreak.Counting.ALL_UNITS)
            .freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(1)))
            .need(1, 3)
            .need(2, 2);
    ByHand plan = new ByHand(world.world()).order(1, packs(SINGLE, 3)).order(2, packs(SINGLE, 2));
    allowed(plan.eat("day 1", "O1").eat("day 2", "O2"), "10");
    assertThat(optimum(world)).isEqualTo(costs("10"));
  }

  /**
   * A bag of two at 3.90, three from two bags on at 3.00: one bag and three single mice are not
   * "from four packs on". Five pieces: two bags 6.00 + 2.00, less than 3.90 + 6.00.
   */
  @Test
  void packs_of_two_rows_do_not_add_up() {
    Pack two = pack(MOUSE, 2, "3.90");
    PriceBreak ofTwo =
        new PriceBreak(
            two.id(),
            PriceBreak.Counting.ALL_UNITS,
            List.of(new PriceBreak.Step(2, Money.of("3.00"))));
    SmallWorld world =
        new SmallWorld(1, SmallSupplier.selling(SINGLE, two).breaks(ofTwo)).need(1, 5);
    ByHand one = new ByHand(world.world()).order(1, packs(two, 1), packs(SINGLE, 3));
    allowed(one.eat("day 1", "O1"), "9.90");
    assertThat(optimum(world)).isEqualTo(costs("8"));
  }
}
