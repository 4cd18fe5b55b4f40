package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.pack;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.supply.Pack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackPriceTest {
  /** A price that is finer than the currency's minor unit is rounded half-up, pack by pack. */
  @ParameterizedTest(name = "3 x {1} {0} are {2}")
  @CsvSource({
    "EUR, 2.00, 6.00",
    "EUR, 0.334, 0.99",
    "EUR, 0.335, 1.02",
    "JPY, 99.49, 297",
    "JPY, 99.50, 300",
    "KWD, 0.0335, 0.102",
    "EUR, 0.00, 0"
  })
  void each_pack_is_rounded_to_the_minor_unit(String currency, String price, String goods) {
    Pack one = pack(MOUSE, 1, price);
    SmallWorld world = new SmallWorld(1, SmallSupplier.selling(one)).currency(currency).need(1, 3);
    allowed(new ByHand(world.world()).order(1, packs(one, 3)).eat("day 1", "O1"), goods);
    assertThat(optimum(world)).isEqualTo(costs(goods));
  }

  /** Ten at 15.00 or single ones at 2.00: seven are 14.00; eight would be 16.00, ten are 15.00. */
  @Test
  void the_pack_that_costs_least_in_all_is_bought() {
    SmallSupplier both = SmallSupplier.selling(SINGLE, pack(MOUSE, 10, "15.00"));
    assertThat(optimum(new SmallWorld(1, both).need(1, 7))).isEqualTo(costs("14"));
    assertThat(optimum(new SmallWorld(1, both).need(1, 8))).isEqualTo(costs("15"));
    assertThat(optimum(new SmallWorld(1, both).need(1, 11))).isEqualTo(costs("17"));
  }
}
