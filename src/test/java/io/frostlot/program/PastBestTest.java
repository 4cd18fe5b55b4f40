package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.freezer;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Policy;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A piece that is eaten after its best before is reckoned at 0.50; a mouse costs 2.00. */
class PastBestTest {
  /** A shop that is open every day; the way to it costs something. */
  private static SmallWorld shop(String way) {
    Shipping trip =
        new Shipping(
            Shipping.Rate.FREE,
            Shipping.Packing.FREE,
            List.of(),
            List.of(new Shipping.OrderCharge(Period.ALWAYS, Money.of(way))));
    return charged(new SmallWorld(9, SmallSupplier.selling(SINGLE).shipping(trip)));
  }

  private static SmallWorld charged(SmallWorld world) {
    return world.charges(Policy.Charges.NONE.withPastBest(Money.of("0.50")));
  }

  private static Freezer bestFor(String name, String litres, int days) {
    return freezer(name, litres, Freezer.Life.of(100).withBest(new Freezer.Best(days)));
  }

  private static StockLot lot(String id, int bestBefore, int useBy) {
    return new StockLot(id, MOUSE, 1, "A", day(-30), new Keeps(day(bestBefore), day(useBy)));
  }

  /** Bought on day 1, at its best for five days, so up to and with day 5; one way of 3.00. */
  @ParameterizedTest(name = "eaten on day {0}: {1}")
  @CsvSource({"5, 7", "6, 7.50", "9, 7.50"})
  void a_piece_is_charged_once_when_eaten_after_its_best_before(int last, String money) {
    SmallWorld world = shop("3").freezers(bestFor("A", "9", 5)).need(1, 1).need(last, 1);
    ByHand plan = new ByHand(world.world()).order(1, packs(SINGLE, 2));
    allowed(plan.eat("day 1", "O1").eat("day " + last, "O1"), money);
    assertThat(optimum(world)).isEqualTo(costs(money));
  }

  /** 6.00 for three mice; two pieces past their best come to 1.00, or there is a second way. */
  @ParameterizedTest(name = "a way of {0}: {1}")
  @CsvSource({"3, 10", "0.90, 7.80"})
  void another_way_is_made_where_it_costs_less(String way, String money) {
    SmallWorld world = shop(way).freezers(bestFor("A", "9", 5)).need(1, 1).need(7, 2);
    assertThat(optimum(world)).isEqualTo(costs(money));
  }

  /** A litre each, both bought on day 2: what is eaten on day 5 lies in B. */
  @ParameterizedTest(name = "in B at its best for {0} days: {1}")
  @CsvSource({"4, 7", "3, 7.50"})
  void best_before_follows_from_the_freezer(int days, String money) {
    SmallWorld world =
        shop("3").freezers(bestFor("A", "1", 2), bestFor("B", "1", days)).need(2, 1).need(5, 1);
    assertThat(optimum(world)).isEqualTo(costs(money));
  }

  /** P is past its best anyway, Q from day 3 on: Q first, although P goes past its use-by first. */
  @Test
  void what_will_soon_be_past_its_best_is_eaten_before_what_already_is() {
    SmallWorld world =
        charged(new SmallWorld(9))
            .stock(lot("P", -1, 8))
            .stock(lot("Q", 2, 20))
            .need(2, 1)
            .need(5, 1);
    allowed(new ByHand(world.world()).eat("day 2", "Q").eat("day 5", "P"), "0.50");
    allowed(new ByHand(world.world()).eat("day 2", "P").eat("day 5", "Q"), "1");
    assertThat(optimum(world)).isEqualTo(costs("0.50"));
  }

  /** Nothing is charged for what is only kept, or thrown away. */
  @Test
  void what_is_not_eaten_is_not_charged() {
    SmallWorld world = charged(new SmallWorld(9)).stock(lot("P", -1, 8)).stock(lot("Q", 2, 20));
    allowed(new ByHand(world.world()), "0");
    allowed(new ByHand(world.world()).discard("Q", 4, 1), "0");
    assertThat(optimum(world)).isEqualTo(costs("0"));
  }
}
