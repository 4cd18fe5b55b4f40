package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Handling;
import io.frostlot.keeping.Lateness;
import io.frostlot.keeping.PieceLimit;
import io.frostlot.plan.HandmadeRoom;
import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.units.Grams;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class WishTest {
  private static final Money DEAREST = Money.of(100);

  private static Wish wish(World world, String says) {
    return Wish.of(world, DEAREST).stream()
        .filter(it -> it.says().equals(says))
        .findFirst()
        .orElseThrow();
  }

  private static World asking(Policy policy) {
    World room = HandmadeRoom.world();
    return room.withScenario(room.scenario().withPolicy(policy));
  }

  private static Policy with(Wish wish) {
    return wish.with().scenario().policy();
  }

  private static Policy without(Wish wish) {
    return wish.without().scenario().policy();
  }

  @Test
  void what_is_not_asked_for_is_looked_at_in_a_usual_measure() {
    World room = HandmadeRoom.world();
    Policy own = room.scenario().policy();
    Wish margin = wish(room, "a margin of 10 %");
    assertThat(margin.asked()).isFalse();
    assertThat(with(margin)).isEqualTo(own.withSafety(new Policy.Safety(0, Percent.of("10"))));
    assertThat(margin.without()).isEqualTo(room);
    assertThat(
            with(wish(room, "at most 90.00 EUR an order, nine tenths of the dearest"))
                .ordering()
                .budget()
                .perOrder())
        .isEqualTo(Money.of(90));
    assertThat(
            with(wish(room, "effort reckoned at 5.00 EUR an order, a twentieth of the dearest"))
                .charges()
                .order())
        .isEqualTo(Money.of(5));
  }

  @Test
  void what_is_asked_for_is_looked_at_as_it_is_and_only_that_is_left_out() {
    Policy strict =
        HandmadeRoom.world()
            .scenario()
            .policy()
            .withSafety(new Policy.Safety(2, Percent.of("5")))
            .withAdequacy(new Policy.Adequacy(true, Percent.of("90"), Percent.of("110")));
    World world = asking(strict);
    Wish cover = wish(world, "2 days of cover");
    assertThat(cover.asked()).isTrue();
    assertThat(cover.with()).isEqualTo(world);
    assertThat(without(cover)).isEqualTo(strict.withSafety(new Policy.Safety(0, Percent.of("5"))));
    assertThat(without(wish(world, "adequacy, 90 % to 110 %")).adequacy().asked()).isFalse();
  }

  @Test
  void food_in_a_second_freezer_is_a_wish_of_its_own() {
    World room = HandmadeRoom.world();
    Policy own = room.scenario().policy();
    Policy asking =
        own.withSafety(Policy.Safety.NONE.withSecondFreezer(new Policy.SecondFreezer(7)));
    Wish week = wish(asking(asking), "food for 7 days in a second freezer");
    assertThat(week.asked()).isTrue();
    assertThat(without(week)).isEqualTo(own);
    assertThat(without(wish(asking(asking), "3 days of cover"))).isEqualTo(asking);
    assertThat(wish(room, "food for 14 days in a second freezer").asked()).isFalse();
  }

  private static Wish.Freer freer(World world, String says) {
    return wish(world, says).bearing().freer();
  }

  /** More days about the same best day, or more prey where nothing is asked of it, allow more. */
  @Test
  void which_side_allows_all_that_the_other_does_is_said_only_where_it_is_so() {
    World room = HandmadeRoom.world();
    String largest = "the largest piece of each animal";
    assertThat(freer(room, "meals that may come early or late")).isEqualTo(Wish.Freer.WITH);
    assertThat(freer(room, "bags sorted at home into two halves")).isEqualTo(Wish.Freer.NEITHER);
    World small =
        Loosened.animals(
            room, it -> it.withDiet(it.diet().withLargest(new PieceLimit.OfGrams(Grams.of(25)))));
    World less = small.projectedAgain(small.scenario());
    assertThat(freer(less, largest)).isEqualTo(Wish.Freer.WITHOUT);
    Policy adequate =
        room.scenario()
            .policy()
            .withAdequacy(new Policy.Adequacy(true, Percent.of("97"), Percent.of("105")));
    World weighed = less.withScenario(less.scenario().withPolicy(adequate));
    assertThat(freer(weighed, largest)).isEqualTo(Wish.Freer.NEITHER);
    Handling show =
        new Handling(
            new Period(LocalDate.parse("2031-01-13"), LocalDate.parse("2031-01-13")), "a show");
    World handled = Loosened.animals(room, it -> it.withHandling(List.of(show)));
    String clear = "no meal on the three days before an animal is handled";
    assertThat(freer(handled.projectedAgain(handled.scenario()), clear))
        .isEqualTo(Wish.Freer.NEITHER);
  }

  @Test
  void animals_have_wishes_too() {
    World room = HandmadeRoom.world();
    Wish late = wish(room, "at most 2 late meals of an animal");
    assertThat(late.with().scenario().collection().animals())
        .extracting(animal -> animal.programme().days().limits())
        .containsOnly(List.of(new Lateness(Lateness.Counted.MEALS, 2)));
    List<Animal> limited = late.with().scenario().collection().animals();
    World world = room.withScenario(room.scenario().withAnimals(limited));
    Wish asked = wish(world, "limits on late meals");
    assertThat(asked.with()).isEqualTo(world);
    assertThat(asked.without()).isEqualTo(room);
  }
}
