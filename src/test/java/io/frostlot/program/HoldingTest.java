package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.plan.Books;
import io.frostlot.plan.Policy;
import io.frostlot.storage.PlacedLot;
import io.frostlot.supply.Shipping;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A piece is reckoned at 0.50 a night. */
class HoldingTest {
  private static SmallWorld charged(SmallWorld world) {
    return world.charges(new Policy.Charges(Money.of("0.50"), Money.ZERO, Money.ZERO, Money.ZERO));
  }

  /** A shop to which the way costs 3.00, so six nights cost as much as another trip. */
  private static SmallWorld meals(int first, int second) {
    Shipping way =
        new Shipping(
            Shipping.Rate.FREE,
            Shipping.Packing.FREE,
            List.of(),
            List.of(new Shipping.OrderCharge(Period.ALWAYS, Money.of(3))));
    return charged(new SmallWorld(9, SmallSupplier.selling(SINGLE).shipping(way)))
        .need(first, 1)
        .need(second, 1);
  }

  /** 4.00 for two mice, 3.00 for the way, and the nights up to the second meal. */
  @ParameterizedTest(name = "{0}: {1}, least {2}")
  @CsvSource({"2, 7.50, 7.50", "6, 9.50, 9.50", "7, 10, 10", "8, 10.50, 10"})
  void a_piece_is_charged_for_every_night_until_it_is_eaten(int day, String one, String least) {
    SmallWorld world = meals(1, day);
    ByHand plan = new ByHand(world.world()).order(1, packs(SINGLE, 2));
    Books books = allowed(plan.eat("day 1", "O1").eat("day " + day, "O1"));
    assertThat(books.standing().money()).isEqualTo(Money.of(one));
    assertThat(books.total(Books.Account.CASH)).isEqualTo(Money.of(7));
    assertThat(optimum(world)).isEqualTo(costs(least));
  }

  /** It may be there on day 1 and is eaten on day 3: two nights. */
  @Test
  void nights_are_counted_from_the_earliest_arrival() {
    SmallWorld world =
        charged(new SmallWorld(5).placed(new PlacedLot("P", MOUSE, 1, day(1), day(3)))).need(3, 1);
    allowed(new ByHand(world.world()).eat("day 3", "P"), "1");
    assertThat(optimum(world)).isEqualTo(costs("1"));
  }

  /** Two pieces, usable until day 3 or for longer than the five planning days. */
  @ParameterizedTest(name = "use by day {0}: {1}")
  @CsvSource({"3, 3", "5, 5", "9, 5"})
  void what_is_not_eaten_is_charged_until_it_leaves_or_the_planning_ends(int useBy, String money) {
    SmallWorld world = charged(new SmallWorld(5).stock("S", 2, useBy));
    allowed(new ByHand(world.world()), money);
    allowed(new ByHand(world.world()).discard("S", 1, 2), "0");
    assertThat(optimum(world)).isEqualTo(costs("0"));
  }
}
