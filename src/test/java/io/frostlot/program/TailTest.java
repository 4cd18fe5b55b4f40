package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.pack;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.Schedule;
import io.frostlot.plan.Books;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Pack;
import io.frostlot.units.Grams;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A mouse on day 1 and every seven days from then on; seven planning days. */
class TailTest {
  private static SmallWorld world(int tailDays, Pack... packs) {
    MealSize.Tolerance tolerance = new MealSize.Tolerance(Percent.of("80"), Percent.of("120"));
    Animal amber =
        new Animal(
            "Amber",
            new Curve.Constant(Grams.of(500)),
            day(1),
            new Animal.Diet(Set.of("mouse"), Grams.of(30), 1),
            new Animal.Programme(
                new Schedule.Every(7, day(1)),
                new MealSize.Fixed(Grams.of(25), tolerance),
                Importance.MUST,
                Animal.Leeway.NONE),
            List.of(),
            Period.ALWAYS);
    return new SmallWorld(7, SmallSupplier.selling(packs)).tail(tailDays).animal(amber);
  }

  /**
   * A mouse at 2.00 or two at 3.00, so a meal of the tail is bought at 1.50. Day 8 is the first day
   * of the tail: one bought and one of the tail 3.50, two bought 3.00.
   */
  @ParameterizedTest(name = "{0} days: one {1}, two {2}, least {3}")
  @CsvSource({"0, 2, 3, 2", "1, 3.50, 3, 3", "7, 3.50, 3, 3", "8, 5, 4.50, 4.50"})
  void what_is_left_over_is_worth_the_meals_it_serves(
      int tailDays, String one, String two, String least) {
    Pack pair = pack(MOUSE, 2, "3.00");
    SmallWorld world = world(tailDays, SINGLE, pair);
    ByHand single = new ByHand(world.world()).order(1, packs(SINGLE, 1));
    allowed(single.eat("Amber 2031-01-01", "O1"), one);
    ByHand both = new ByHand(world.world()).order(1, packs(pair, 1)).eat("Amber 2031-01-01", "O1");
    allowed(tailDays == 0 ? both : both.eat("Amber 2031-01-08", "O1"), two);
    assertThat(optimum(world)).isEqualTo(costs(least));
  }

  /** Two at 4.10 are more than a single mouse at 2.00, now and in the tail. */
  @Test
  void a_leftover_is_worth_no_more_than_what_it_replaces() {
    Pack pair = pack(MOUSE, 2, "4.10");
    SmallWorld world = world(7, SINGLE, pair);
    ByHand both = new ByHand(world.world()).order(1, packs(pair, 1)).eat("Amber 2031-01-01", "O1");
    allowed(both.eat("Amber 2031-01-08", "O1"), "4.10");
    Books single =
        allowed(new ByHand(world.world()).order(1, packs(SINGLE, 1)).eat("Amber 2031-01-01", "O1"));
    assertThat(single.total(Books.Account.CASH)).isEqualTo(Money.of(2));
    assertThat(single.total(Books.Account.TAIL)).isEqualTo(Money.of(2));
    assertThat(optimum(world)).isEqualTo(costs("4"));
  }

  /** Prey that keeps seven days is gone on day 8: 2.00 + 1.50; with eight days two for 3.00. */
  @ParameterizedTest(name = "keeps {0} days: {1}")
  @CsvSource({"7, 3.50", "8, 3"})
  void life_binds_in_the_tail(int lifeDays, String least) {
    SmallWorld world =
        world(7, SINGLE, pack(MOUSE, 2, "3.00"))
            .freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(lifeDays)));
    assertThat(optimum(world)).isEqualTo(costs(least));
  }

  /** Three meals of the tail, of which nothing is left over: each at a third of 1.00, 0.3333. */
  @Test
  void a_meal_of_the_tail_is_priced_to_four_decimals() {
    Pack three = pack(MOUSE, 3, "1.00");
    SmallWorld world = world(21, three).freezers(SmallWorld.freezer("A", "10", Freezer.Life.of(1)));
    ByHand plan = new ByHand(world.world()).order(1, packs(three, 1));
    allowed(plan.eat("Amber 2031-01-01", "O1"), "1.9999");
    assertThat(optimum(world)).isEqualTo(costs("1.9999"));
  }
}
