package io.frostlot.program;

import static io.frostlot.program.ByHand.boxes;
import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.best;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.SOURCE;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Pledge;
import io.frostlot.plan.World;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Four mice at 2.00 are eaten on day 2, the last; a box holds two, the first of an order is 5.00,
 * the next 1.00.
 */
class PledgedPacksTest {
  private static World world(Pledge... pledges) {
    SmallSupplier source =
        SmallSupplier.selling(SINGLE)
            .boxing(
                new Boxing(
                    Boxing.Way.BY_TOTAL,
                    new Boxing.Limits(Grams.UNLIMITED, Litres.UNLIMITED, 2),
                    4))
            .shipping(
                new Shipping(
                    new Shipping.Rate(Money.ZERO, Money.of(5), Money.of(1)),
                    Shipping.Packing.FREE,
                    List.of(),
                    List.of()));
    return new SmallWorld(2, source).need(2, 4).world().withPledges(List.of(pledges));
  }

  private static Pledge pledge(Period dates, int packs, int mostBoxes) {
    return new Pledge(SOURCE, Set.of(SINGLE.id()), dates, Pledge.Packs.atLeast(packs), mostBoxes);
  }

  /** 8 + 5 + 1 at once; five mice fill a third box: 10 + 5 + 2. */
  @Test
  void what_is_pledged_is_bought_whatever_it_is_good_for() {
    assertThat(best(world()).standing()).isEqualTo(costs("14"));
    World five = world(pledge(Period.ALWAYS, 5, Pledge.ANY_BOXES));
    assertThat(best(five).standing()).isEqualTo(costs("17"));
    ByHand four = new ByHand(five).sent(2, boxes(2), packs(SINGLE, 4)).eat("day 2", "O1");
    refused(four, "pledged-packs");
  }

  /** One box on each day: 8 + 10. */
  @Test
  void no_more_boxes_are_filled_than_are_paid_for() {
    World one = world(pledge(Period.ALWAYS, 1, 1));
    refused(
        new ByHand(one).sent(2, boxes(2), packs(SINGLE, 4)).eat("day 2", "O1"), "pledged-packs");
    ByHand apart =
        new ByHand(one).sent(1, boxes(1), packs(SINGLE, 2)).sent(2, boxes(1), packs(SINGLE, 2));
    allowed(apart.eat("day 2", 2, "O1").eat("day 2", 2, "O2"), "18");
    assertThat(best(one).standing()).isEqualTo(costs("18"));
  }
}
