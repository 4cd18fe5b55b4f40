package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.best;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.Faces.unmet;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.SINGLE;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.freezer;
import static io.frostlot.program.SmallWorld.pack;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Books;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Lot;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Pack;
import io.frostlot.units.Litres;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pieces of a litre at 2.00, to be had on day 1 only. */
class FreezerSpaceTest {
  private static final String RULE = "freezer-space";
  private static final Freezer.Life LONG = Freezer.Life.of(50);

  private static SmallWorld dayOne(Freezer... freezers) {
    Delivery dayOne = new Delivery.Show(new Delivery.Lead(0, false, 0, List.of()), List.of(day(1)));
    return new SmallWorld(3, SmallSupplier.selling(SINGLE).delivery(dayOne)).freezers(freezers);
  }

  private static ByHand fiveBought(SmallWorld world) {
    return new ByHand(world.world()).order(1, packs(SINGLE, 5));
  }

  @Test
  void a_delivery_may_fill_a_freezer_to_the_brim() {
    SmallWorld world = dayOne(freezer("A", "5", LONG)).need(2, 5);
    ByHand plan = fiveBought(world).eat("day 2", "O1");
    assertThat(allowed(plan).uses()).contains(new Books.Use(RULE, "A on 2031-01-01", 5, 5));
    assertThat(optimum(world)).isEqualTo(costs("10"));
  }

  /** A millionth of a litre too little, and one meal is not met. */
  @Test
  void a_delivery_that_is_a_little_too_big_is_refused() {
    SmallWorld world = dayOne(freezer("A", "4.999999", LONG)).need(2, 5);
    refused(fiveBought(world).eat("day 2", "O1"), RULE);
    assertThat(optimum(world)).isEqualTo(unmet(1, "8"));
  }

  /** Five in hand are eaten on the day on which five come for the next. */
  @Test
  void a_freezer_is_checked_before_or_after_the_meals_of_the_day() {
    SmallWorld world = dayOne(freezer("A", "5", LONG)).stock("S", 5, 9).need(1, 5).need(2, 5);
    refused(fiveBought(world).eat("day 1", "S").eat("day 2", "O1"), RULE);
    assertThat(optimum(world)).isEqualTo(unmet(5, "0"));
    world.checkedAtNight();
    allowed(fiveBought(world).eat("day 1", "S").eat("day 2", "O1"), "10");
    assertThat(optimum(world)).isEqualTo(costs("10"));
  }

  /** With room for four after the meals, one of the five that come finds none. */
  @Test
  void what_is_left_after_the_meals_must_fit() {
    SmallWorld world = dayOne(freezer("A", "4", LONG)).checkedAtNight().need(1, 1).need(2, 5);
    ByHand six = new ByHand(world.world()).order(1, packs(SINGLE, 6));
    refused(six.eat("day 1", "O1").eat("day 2", "O1"), RULE);
    assertThat(optimum(world)).isEqualTo(unmet(1, "10"));
  }

  private static Freezer limited(Freezer freezer, Freezer.Limit... limits) {
    return freezer.withAccess(new Freezer.Access(true, Freezer.Company.NONE, List.of(limits)));
  }

  private static Freezer.Limit limit(int from, int to, String litres) {
    return new Freezer.Limit(SmallWorld.days(from, to), Litres.of(new BigDecimal(litres)));
  }

  /**
   * On day 3 the freezer has two litres for two days, of which only the evening of day 3 counts
   * where it is checked at night: of the two mice of day 3 and the three of day 5, the two of day 3
   * must fit too where it is checked before meals.
   */
  @ParameterizedTest(name = "checked at night: {0}")
  @CsvSource({"false, 3", "true, 1"})
  void less_room_for_a_time_is_looked_at_when_it_begins(boolean atNight, int unmet) {
    SmallWorld world =
        new SmallWorld(5, SmallSupplier.selling(SINGLE).delivery(on(1)))
            .freezers(limited(freezer("A", "9", LONG), limit(3, 4, "2")))
            .need(3, 2)
            .need(5, 3);
    if (atNight) {
      world.checkedAtNight();
    }
    assertThat(optimum(world)).isEqualTo(unmet(unmet, String.valueOf(2 * (5 - unmet))));
    ByHand plan = new ByHand(world.world()).order(1, packs(SINGLE, 5 - unmet + 1));
    refused(plan.eat("day 3", 2, "O1").eat("day 5", 3 - unmet + 1, "O1"), RULE);
  }

  /** Three litres on day 2, one on day 3, ten after: four come on day 4. */
  @Test
  void of_several_limits_the_least_holds_and_only_on_its_days() {
    Freezer freezer =
        limited(freezer("A", "10", LONG), limit(2, 3, "3"), limit(3, 3, "1"), limit(9, 9, "0"));
    SmallWorld world =
        new SmallWorld(5, SmallSupplier.selling(SINGLE).delivery(on(1, 4)))
            .freezers(freezer)
            .need(2, 2)
            .need(3, 1)
            .need(5, 4);
    ByHand plan = new ByHand(world.world()).order(1, packs(SINGLE, 3)).order(4, packs(SINGLE, 4));
    Books books = allowed(plan.eat("day 2", "O1").eat("day 3", "O1").eat("day 5", "O2"));
    assertThat(books.uses()).containsExactly(new Books.Use(RULE, "A on 2031-01-02", 3, 3));
    assertThat(optimum(world)).isEqualTo(costs("14"));
  }

  private static Delivery on(int... days) {
    return new Delivery.Show(
        new Delivery.Lead(0, false, 0, List.of()),
        IntStream.of(days).mapToObj(SmallWorld::day).toList());
  }

  private static Lot in(Lot lot, String id, String freezer, int pieces) {
    return new Lot(
        id, lot.item(), pieces, freezer, lot.earliest(), lot.latest(), lot.useBy(), lot.origin());
  }

  private static ByHand split(SmallWorld world) {
    ByHand plan = fiveBought(world);
    Lot all = plan.lot("O1");
    plan.put(in(all, "O1", "A", 3)).put(in(all, "O2", "B", 2));
    return plan.eat("day 2", 3, "O1").eat("day 2", 2, "O2");
  }

  @Test
  void a_delivery_may_be_split_over_freezers() {
    SmallWorld world = dayOne(freezer("A", "3", LONG), freezer("B", "2", LONG)).need(2, 5);
    allowed(split(world), "10");
    assertThat(optimum(world)).isEqualTo(costs("10"));
  }

  /** Only three find room where new prey may be put. */
  @Test
  void nothing_new_is_put_into_a_freezer_that_is_not_in_use() {
    Freezer off = freezer("B", "2", LONG);
    SmallWorld world =
        dayOne(
                freezer("A", "3", LONG),
                new Freezer(off.name(), off.usable(), off.kind(), off.life(), false))
            .need(2, 5);
    refused(split(world), RULE);
    assertThat(optimum(world)).isEqualTo(unmet(2, "6"));
  }

  /** Six in hand in five litres: one is thrown away at once, and one of six meals is not met. */
  @Test
  void what_overfills_a_freezer_on_the_first_day_is_thrown_away() {
    SmallWorld world = new SmallWorld(3).freezers(freezer("A", "5", LONG)).stock("S", 6, 9);
    world.need(2, 6);
    refused(new ByHand(world.world()).eat("day 2", 5, "S"), RULE);
    allowed(new ByHand(world.world()).discard("S", 1, 1).eat("day 2", 5, "S"), "0");
    assertThat(optimum(world)).isEqualTo(unmet(1, "0"));
  }

  /**
   * Ten in hand, usable until day 5, fill the freezer. Five are needed on day 4 and five on day 8,
   * and packs of ten at 8.00 come on day 3 only: the old ones, which could still be eaten, go then.
   */
  @Test
  void all_that_is_old_goes_where_a_delivery_needs_the_whole_freezer() {
    Pack ten = pack(MOUSE, 10, "8.00");
    Delivery dayThree =
        new Delivery.Show(new Delivery.Lead(0, false, 0, List.of()), List.of(day(3)));
    SmallWorld world =
        new SmallWorld(8, SmallSupplier.selling(ten).delivery(dayThree))
            .freezers(freezer("A", "10", LONG))
            .stock("S", 10, 5)
            .need(4, 5)
            .need(8, 5);
    ByHand plan = new ByHand(world.world()).order(3, packs(ten, 1)).discard("S", 3, 9);
    refused(plan.eat("day 4", "O1").eat("day 8", "O1"), RULE);
    allowed(plan.discard("S", 3, 1), "8");
    Answer.Judged best = best(world.world());
    assertThat(best.standing()).isEqualTo(costs("8"));
    assertThat(best.plan().discards())
        .extracting(Discard::day, Discard::pieces)
        .containsExactly(tuple(day(3), 10));
  }
}
