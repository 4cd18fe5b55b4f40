package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.freezer;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.forecast.Option;
import io.frostlot.plan.Books;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.Standing;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Mice at 2.00 each, fetched on day 1 only; three are eaten on day 3, four on day 5. What is there
 * is looked at on the night of every second day, which is that of day 2 and that of day 4, for the
 * meals of the two days after: three mice should lie outside either freezer on the night of day 2,
 * four on that of day 4.
 */
class SecondFreezerTest {
  private static Delivery on(int day) {
    return new Delivery.Show(new Delivery.Lead(0, false, 0, List.of()), List.of(day(day)));
  }

  private static SmallWorld world(int days, Freezer... freezers) {
    return new SmallWorld(6, SmallSupplier.selling(SINGLE).delivery(on(1)))
        .freezers(freezers)
        .safety(
            new Policy.Safety(0, Percent.ZERO).withSecondFreezer(new Policy.SecondFreezer(days)))
        .need(3, 3)
        .need(5, 4);
  }

  private static SmallWorld world(int days) {
    return world(days, lasting("A", "100"), lasting("B", "100"));
  }

  private static Freezer lasting(String name, String litres) {
    return freezer(name, litres, Freezer.Life.of(100));
  }

  /** So many of the mice bought into A and into B; those of day 3 are eaten from A. */
  private static Books split(SmallWorld small, int intoA, int intoB, String lastFrom) {
    ByHand plan = new ByHand(small.world());
    plan.order(1, packs(SINGLE, intoA + intoB));
    Lot all = plan.lot("O1");
    plan.put(all.withPieces(intoA));
    plan.put(
        new Lot(
            "O2", all.item(), intoB, "B", all.earliest(), all.latest(), all.useBy(), all.origin()));
    return allowed(plan.eat("day 3", "O1").eat("day 5", lastFrom));
  }

  /**
   * Of seven mice, three in A and four in B: where A fails on night 2, there are four for the meals
   * of day 3; where B fails, three. On night 4 none is left in A: where B fails, all four lack.
   * Every day is looked at for one day, that of day 3 alone for three days, that of day 5 for five.
   */
  @ParameterizedTest(name = "{0} days, {1} in A, {2} in B: {3} lack")
  @CsvSource({
    "0, 3, 4, 0",
    "2, 3, 4, 4",
    "2, 7, 4, 0",
    "2, 6, 4, 1",
    "2, 7, 3, 1",
    "2, 7, 1, 5",
    "1, 6, 4, 1",
    "3, 3, 4, 4",
    "5, 3, 4, 0"
  })
  void pieces_outside_the_freezer_that_fails_are_counted(
      int days, int intoA, int intoB, int lacking) {
    String lastFrom = intoB < 4 ? "O1" : "O2";
    assertThat(split(world(days), intoA, intoB, lastFrom).standing())
        .isEqualTo(new Standing(0, 0, lacking, Money.of(2L * (intoA + intoB))));
  }

  @Test
  void says_which_freezer_might_fail_on_which_night() {
    assertThat(split(world(2), 7, 1, "O1").shortfalls())
        .containsExactly(
            Shortfall.counted(
                "second-freezer",
                Shortfall.Unit.PIECES,
                List.of(
                    new Shortfall.Part("A", SmallWorld.days(2, 2), 2),
                    new Shortfall.Part("A", SmallWorld.days(4, 4), 3))));
  }

  /**
   * Seven are eaten. Where the night of day 3 or day 4 is looked at, four should lie in either
   * freezer then, after three were eaten: eleven.
   */
  @ParameterizedTest(name = "{0} days: {1} mice")
  @CsvSource({"0, 7", "1, 11", "2, 11", "3, 11", "4, 11", "5, 7", "6, 7"})
  void more_is_bought_where_that_is_asked_for(int days, int mice) {
    assertThat(optimum(world(days))).isEqualTo(new Standing(0, 0, 0, Money.of(2L * mice)));
  }

  @Test
  void one_freezer_in_use_is_asked_for_nothing() {
    Freezer old = new Freezer("B", lasting("B", "9").usable(), "deep", Freezer.Life.of(9), false);
    assertThat(optimum(world(2, lasting("A", "100"), old)))
        .isEqualTo(new Standing(0, 0, 0, Money.of(14)));
  }

  /**
   * There is room for six mice in A and two in B. On night 2 the two are one too few where A fails.
   * On night 4, with five left, three in A and two in B lack one and two.
   */
  @Test
  void it_gives_way_before_a_meal_does() {
    assertThat(optimum(world(2, lasting("A", "6"), lasting("B", "2"))))
        .isEqualTo(new Standing(0, 0, 1 + 2 + 1, Money.of(16)));
  }

  private static Need need(String label, int leastGrams, int mostGrams) {
    Meal.Days onTheDay = new Meal.Days(day(3), day(3), day(3));
    return new Need(label, "mouse", Grams.of(leastGrams), Grams.of(mostGrams), 1, onTheDay);
  }

  /**
   * One meal takes mice of 20 or 25 g, one those of 25 g only. All there is lies in B, the fair
   * comes too late: where B fails, two lack. Where A fails, what lacks is what cannot be eaten
   * either.
   */
  @ParameterizedTest(name = "{0} of 20 g and {1} of 25 g: {2} lack")
  @CsvSource({"2, 0, 1", "1, 1, 0", "0, 2, 0", "0, 1, 1", "1, 0, 1", "9, 0, 1"})
  void a_piece_is_counted_for_one_meal_that_it_would_do_for(int light, int heavy, int lacking) {
    SmallWorld small =
        new SmallWorld(3, SmallSupplier.selling(SINGLE).delivery(on(99)))
            .freezers(lasting("A", "100"), lasting("B", "100"))
            .safety(Policy.Safety.NONE.withSecondFreezer(new Policy.SecondFreezer(1)))
            .need(need("either", 15, 30))
            .need(need("heavy", 23, 30));
    stock(small, prey("Light mouse", "mouse", 20), light);
    stock(small, MOUSE, heavy);
    assertThat(optimum(small)).isEqualTo(new Standing(lacking, 0, lacking + 2, Money.ZERO));
  }

  private static Need due(int earliest, int best, int latest) {
    Meal.Days days = new Meal.Days(day(earliest), day(best), day(latest));
    return new Need("due " + best, "mouse", Grams.of(20), Grams.of(30), 1, days);
  }

  private static SmallWorld due(Need... needs) {
    SmallWorld small =
        new SmallWorld(6, SmallSupplier.selling(SINGLE).delivery(on(1)))
            .freezers(lasting("A", "100"), lasting("B", "100"))
            .safety(Policy.Safety.NONE.withSecondFreezer(new Policy.SecondFreezer(2)));
    for (Need need : needs) {
      small.need(need);
    }
    return small;
  }

  /**
   * On the night of day 2 one mouse should lie in either freezer for the meal of day 4. Another
   * meal is due on day 2: eaten then, it is one mouse more, three in all. Where it waits until day
   * 3 its own mouse does not stand in for the other meal's: two in either freezer, four.
   */
  @Test
  void a_meal_that_is_eaten_late_still_needs_its_food() {
    assertThat(optimum(due(due(2, 2, 3), due(4, 4, 4))))
        .isEqualTo(new Standing(0, 0, 0, Money.of(6)));
    assertThat(optimum(due(due(3, 3, 3), due(4, 4, 4))))
        .isEqualTo(new Standing(0, 0, 0, Money.of(8)));
    ByHand late = new ByHand(due(due(2, 2, 3), due(4, 4, 4)).world());
    late.order(1, packs(SINGLE, 2));
    Lot both = late.lot("O1");
    late.put(both.withPieces(1));
    late.put(
        new Lot(
            "O2",
            both.item(),
            1,
            "B",
            both.earliest(),
            both.latest(),
            both.useBy(),
            both.origin()));
    Feeding onDayThree =
        new Feeding("due 2", day(3), new Option(MOUSE, 1), 1, List.of(new Feeding.Draw("O1", 1)));
    assertThat(allowed(late.eat(onDayThree).eat("due 4", "O2")).standing())
        .isEqualTo(new Standing(0, 0, 2, Money.of(4)));
  }

  /** Due on day 4 and eaten on day 2, it is one mouse, in any freezer; on day 4, one in either. */
  @Test
  void a_meal_that_was_eaten_early_needs_no_more() {
    assertThat(optimum(due(due(2, 4, 4)))).isEqualTo(new Standing(0, 0, 0, Money.of(2)));
    assertThat(optimum(due(due(3, 4, 4)))).isEqualTo(new Standing(0, 0, 0, Money.of(4)));
  }

  private static void stock(SmallWorld small, Item item, int pieces) {
    if (pieces > 0) {
      small.stock(new StockLot(item.name(), item, pieces, "B", day(-9), day(50)));
    }
  }
}
