package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.Faces.unmet;
import static io.frostlot.program.SmallWorld.MOUSE;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.supply.Pack;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Single mice at 2.00, of which a shop has few; each trip to it costs 5.00. */
class AvailabilityTest {
  private static final String RULE = "availability";
  private static final Pack FEW = limited(3, Pack.UNLIMITED, Period.ALWAYS);
  private static final Pack FEW_EARLY = limited(Pack.UNLIMITED, 3, SmallWorld.days(1, 2));

  private static Pack limited(int perDelivery, int inTotal, Period window) {
    return new Pack(
        MOUSE,
        1,
        Money.of(2),
        new Pack.Availability(perDelivery, inTotal, window),
        SmallWorld.SINGLE.packed());
  }

  private static SmallWorld selling(int days, Pack pack) {
    Shipping trip =
        new Shipping(
            Shipping.Rate.FREE,
            Shipping.Packing.FREE,
            List.of(),
            List.of(new Shipping.OrderCharge(Period.ALWAYS, Money.of(5))));
    return new SmallWorld(days, SmallSupplier.selling(pack).shipping(trip));
  }

  /** Three in one trip: 6.00 + 5.00. */
  @Test
  void as_many_packs_as_one_delivery_has() {
    SmallWorld world = selling(2, FEW).need(2, 3);
    allowed(new ByHand(world.world()).order(2, packs(FEW, 3)).eat("day 2", "O1"), "11");
    assertThat(optimum(world)).isEqualTo(costs("11"));
  }

  /** Four take two trips: 8.00 + 10.00. */
  @Test
  void one_pack_more_takes_another_delivery() {
    SmallWorld world = selling(2, FEW).need(2, 4);
    refused(new ByHand(world.world()).order(2, packs(FEW, 4)).eat("day 2", "O1"), RULE);
    ByHand two = new ByHand(world.world()).order(1, packs(FEW, 3)).order(2, packs(FEW, 1));
    allowed(two.eat("day 2", 3, "O1").eat("day 2", 1, "O2"), "18");
    assertThat(optimum(world)).isEqualTo(costs("18"));
  }

  /** Of four that are needed on day 2 there are three in all until then: 6.00 + 5.00. */
  @Test
  void no_more_packs_than_there_are_in_all() {
    SmallWorld world = selling(2, FEW_EARLY).need(2, 4);
    ByHand three = new ByHand(world.world()).order(1, packs(FEW_EARLY, 2));
    allowed(three.order(2, packs(FEW_EARLY, 1)), "16");
    ByHand four = new ByHand(world.world()).order(1, packs(FEW_EARLY, 2));
    refused(four.order(2, packs(FEW_EARLY, 2)), RULE);
    assertThat(optimum(world)).isEqualTo(unmet(1, "11"));
  }

  /** On day 3 as many as one likes: all four in one trip, 8.00 + 5.00. */
  @Test
  void orders_outside_the_window_are_not_counted() {
    SmallWorld world = selling(3, FEW_EARLY).need(3, 4);
    allowed(new ByHand(world.world()).order(3, packs(FEW_EARLY, 4)).eat("day 3", "O1"), "13");
    ByHand both = new ByHand(world.world()).order(2, packs(FEW_EARLY, 3));
    allowed(both.order(3, packs(FEW_EARLY, 4)), "24");
    assertThat(optimum(world)).isEqualTo(costs("13"));
  }
}
