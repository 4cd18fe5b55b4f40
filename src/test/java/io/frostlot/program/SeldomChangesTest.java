package io.frostlot.program;

import static io.frostlot.program.ByHand.packs;
import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.pack;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.forecast.Projection;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.Standing;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.units.Grams;
import io.frostlot.units.Money;
import io.frostlot.units.SizeBand;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Meals on days 2, 4, 6 and 8. Mice of 20 g cost 2.00 at a shop every day; rats of 40 g cost 1.00
 * at a show on days 4 and 8 and keep one day, so that least money has mouse, rat, mouse, rat: 6.00.
 */
class SeldomChangesTest {
  private static final Item MOUSE = prey("Mouse", "mouse", 20);
  private static final Item RAT = prey("Rat", "rat", 40);
  private static final Pack ONE_MOUSE = pack(MOUSE, 1, "2.00");
  private static final Pack ONE_RAT = pack(RAT, 1, "1.00");
  private static final SizeBand MOUSE_BAND = SizeBand.of("mouse", Grams.of(25));
  private static final SizeBand RAT_BAND = SizeBand.of("rat", Grams.of(33));

  private static Delivery on(int... days) {
    return new Delivery.Show(
        new Delivery.Lead(0, false, 0, List.of()),
        Arrays.stream(days).mapToObj(SmallWorld::day).toList());
  }

  private static SmallWorld world(Plate.Change change, String... animals) {
    return world(SmallSupplier.selling(ONE_MOUSE), on(4, 8), change, animals);
  }

  private static SmallWorld world(
      SmallSupplier mice, Delivery rats, Plate.Change change, String... animals) {
    SmallWorld world =
        new SmallWorld(8, mice, SmallSupplier.named("show", ONE_RAT).delivery(rats))
            .freezers(SmallWorld.freezer("A", "1000", Freezer.Life.of(1)));
    for (String name : animals) {
      world.animal(Eaters.onEvenDays(name, new Plate(new TreeMap<>(), change)));
    }
    return world;
  }

  private static Standing standing(int shortfall, String money) {
    return new Standing(0, 0, shortfall, Money.of(money));
  }

  @Test
  void without_it_the_cheapest_is_eaten() {
    assertThat(optimum(world(new Plate.Free(), "Ash"))).isEqualTo(standing(0, "6"));
  }

  /** Four mice: 8.00, whether it had mice before or that is not known. */
  @Test
  void keeps_to_what_it_has() {
    assertThat(optimum(world(new Plate.Keep(Set.of()), "Ash"))).isEqualTo(standing(0, "8"));
    assertThat(optimum(world(new Plate.Keep(Set.of(MOUSE_BAND)), "Ash")))
        .isEqualTo(standing(0, "8"));
  }

  /** It had rats, but there is none on day 2: one change to mice, then kept. */
  @Test
  void gives_way_before_a_meal_does() {
    assertThat(optimum(world(new Plate.Keep(Set.of(RAT_BAND)), "Ash"))).isEqualTo(standing(1, "8"));
  }

  /**
   * In one meal any change is right. In two meals in a row at most one: with rats on days 4 and 8
   * meals 2, 3 and 4 change; a rat on day 8 alone is one change, 7.00, and also right in any four.
   */
  @ParameterizedTest(name = "at most one change in {0} meals: {1}")
  @CsvSource({"1, 6", "2, 7", "4, 7"})
  void changes_seldom(int meals, String money) {
    assertThat(optimum(world(new Plate.Seldom(meals, Set.of(MOUSE_BAND)), "Ash")))
        .isEqualTo(standing(0, money));
  }

  /** Two animals fed alike: two rats on day 8 and two on none. */
  @Test
  void each_animal_for_itself() {
    assertThat(optimum(world(new Plate.Seldom(4, Set.of(MOUSE_BAND)), "Ash", "Bay")))
        .isEqualTo(standing(0, "14"));
  }

  /**
   * Mouse, rat, mouse, rat: of the three pairs of meals the last two hold two changes, one too many
   * each. Where the first rat is not eaten there is one change, on day 8.
   */
  @Test
  void a_plan_that_changes_too_often_is_said_to_fall_short() {
    SmallWorld world = world(new Plate.Seldom(2, Set.of(MOUSE_BAND)), "Ash");
    assertThat(
            allowed(mice(world).order(4, packs(ONE_RAT, 1)).eat("Ash " + day(4), "O4")).standing())
        .isEqualTo(standing(2, "6"));
    assertThat(allowed(mice(world)).standing()).isEqualTo(new Standing(0, 1, 0, Money.of(5)));
  }

  /** Mice on days 2 and 6, a rat on day 8. */
  private static ByHand mice(SmallWorld world) {
    return new ByHand(world.world())
        .order(2, packs(ONE_MOUSE, 1))
        .order(6, packs(ONE_MOUSE, 1))
        .order(8, packs(ONE_RAT, 1))
        .eat("Ash " + day(2), "O1")
        .eat("Ash " + day(6), "O2")
        .eat("Ash " + day(8), "O3");
  }

  /**
   * Mice come on day 2 only and rats on day 8 only: the two meals between are missed, and the rat
   * is a change from the mouse all the same, of each of two animals. Without the mouse, what it had
   * before the planning days counts. In two meals in a row one change is right, and in four one of
   * two: rat before, mouse on day 2, rat on day 8.
   */
  @Test
  void what_it_had_before_meals_that_it_missed_counts() {
    SmallSupplier once = SmallSupplier.selling(ONE_MOUSE).delivery(on(2));
    Plate.Change keep = new Plate.Keep(Set.of());
    assertThat(optimum(world(once, on(8), keep, "Ash")))
        .isEqualTo(new Standing(0, 2, 1, Money.of(3)));
    assertThat(optimum(world(once, on(8), keep, "Ash", "Bay")))
        .isEqualTo(new Standing(0, 4, 2, Money.of(6)));
    SmallSupplier none = SmallSupplier.selling(ONE_MOUSE).delivery(on(99));
    assertThat(optimum(world(none, on(8), new Plate.Keep(Set.of(MOUSE_BAND)), "Ash")))
        .isEqualTo(new Standing(0, 3, 1, Money.of(1)));
    assertThat(optimum(world(once, on(8), new Plate.Seldom(2, Set.of(RAT_BAND)), "Ash")))
        .isEqualTo(new Standing(0, 2, 0, Money.of(3)));
    assertThat(optimum(world(once, on(8), new Plate.Seldom(4, Set.of(RAT_BAND)), "Ash")))
        .isEqualTo(new Standing(0, 2, 1, Money.of(3)));
  }

  private static Set<Option> options(String kind, int last, int grams, Item... items) {
    SizeBand kept = SizeBand.of(kind, Grams.of(last));
    Animal animal = Eaters.onEvenDays("Ash", new Plate(new TreeMap<>(), new Plate.Never(kept)));
    Meal.Prey prey =
        new Meal.Prey(
            animal.diet().kinds(),
            new MealSize.Window(Grams.of(grams), Grams.of(grams), Grams.of(70)),
            Grams.of(70),
            1,
            animal.diet().plate().kept());
    Meal.Days days = new Meal.Days(day(2), day(2), day(2));
    Meal meal = new Meal("Ash", "Ash", 1, days, prey, Importance.MAY_SLIDE);
    return Set.copyOf(Projection.options(meal, List.of(items)));
  }

  /**
   * Mice of 20 g lie between 16 and 32 g, of 40 g above. It keeps to the first as long as one would
   * do, then takes the next larger, or the next smaller where none is; where there is none of that
   * kind at all, it is not starved.
   */
  @Test
  void what_never_changes_is_left_only_when_outgrown() {
    Item large = prey("Large mouse", "mouse", 40);
    Item small = prey("Small mouse", "mouse", 12);
    assertThat(options("mouse", 25, 10, MOUSE, large, small, RAT))
        .containsExactly(new Option(MOUSE, 1));
    assertThat(options("mouse", 25, 30, MOUSE, large, small, RAT))
        .containsExactly(new Option(large, 1));
    assertThat(options("mouse", 40, 10, MOUSE, small, RAT)).containsExactly(new Option(MOUSE, 1));
    assertThat(options("mouse", 25, 10, RAT)).containsExactly(new Option(RAT, 1));
    assertThat(optimum(world(new Plate.Never(MOUSE_BAND), "Ash"))).isEqualTo(standing(0, "8"));
  }
}
