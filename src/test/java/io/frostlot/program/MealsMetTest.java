package io.frostlot.program;

import static io.frostlot.program.Faces.allowed;
import static io.frostlot.program.Faces.costs;
import static io.frostlot.program.Faces.optimum;
import static io.frostlot.program.Faces.refused;
import static io.frostlot.program.Faces.unmet;
import static io.frostlot.program.SmallWorld.MOUSE;
import static io.frostlot.program.SmallWorld.day;
import static io.frostlot.program.SmallWorld.prey;
import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.forecast.Option;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.Schedule;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Standing;
import io.frostlot.units.Grams;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mice of 25 g in hand. */
class MealsMetTest {
  private static final String RULE = "meals-met";

  private static Grams grams(String grams) {
    return Grams.of(new BigDecimal(grams));
  }

  private static Need need(String least, String most) {
    Meal.Days days = new Meal.Days(day(2), day(3), day(4));
    return new Need("guest", "mouse", grams(least), grams(most), 1, days);
  }

  private static ByHand eaten(SmallWorld world, int day, int times) {
    return new ByHand(world.world())
        .eat(
            new Feeding(
                "guest",
                day(day),
                new Option(MOUSE, 1),
                times,
                List.of(new Feeding.Draw("S", times))));
  }

  /** The window and the largest piece, to the milligram. */
  @ParameterizedTest(name = "{0} to {1} g: {2} not met")
  @CsvSource({"25, 30, 0", "25.001, 30, 1", "20, 25, 0", "20, 24.999, 1"})
  void a_piece_at_the_edge_of_the_window_would_do(String least, String most, int notMet) {
    SmallWorld world = new SmallWorld(5).stock("S", 1, 9).need(need(least, most));
    if (notMet == 0) {
      allowed(eaten(world, 3, 1), "0");
    } else {
      refused(eaten(world, 3, 1), RULE);
    }
    assertThat(optimum(world)).isEqualTo(unmet(notMet, "0"));
  }

  @ParameterizedTest(name = "on day {0}: {1}")
  @CsvSource({"1, false", "2, true", "4, true", "5, false"})
  void a_meal_is_served_on_its_days(int day, boolean fits) {
    SmallWorld world = new SmallWorld(5).stock("S", 1, 9).need(need("20", "30"));
    if (fits) {
      allowed(eaten(world, day, 1), "0");
    } else {
      refused(eaten(world, day, 1), RULE);
    }
  }

  /** Usable until day 2, which is the meal's first day, or until day 1. */
  @ParameterizedTest(name = "use by day {0}: {1} not met")
  @CsvSource({"2, 0", "1, 1"})
  void a_meal_comes_early_where_that_meets_it(int useBy, int notMet) {
    SmallWorld world = new SmallWorld(5).stock("S", 1, useBy).need(need("20", "30"));
    assertThat(optimum(world)).isEqualTo(unmet(notMet, "0"));
  }

  @Test
  void a_meal_is_not_served_twice() {
    SmallWorld world = new SmallWorld(5).stock("S", 2, 9).need(need("20", "30"));
    refused(eaten(world, 3, 2), RULE);
  }

  @Test
  void other_kinds_would_not_do() {
    SmallWorld world = new SmallWorld(5).stock("S", 1, 9).need(prey("Rat", "rat", 25), 3, 1);
    assertThat(optimum(world)).isEqualTo(unmet(1, "0"));
  }

  /** 40 to 60 g, of pieces of up to 30 g. */
  private static Animal animal(int mostPieces, Importance importance) {
    MealSize.Tolerance tolerance = new MealSize.Tolerance(Percent.of("80"), Percent.of("120"));
    return new Animal(
        "Amber",
        new Curve.Constant(Grams.of(500)),
        day(1),
        new Animal.Diet(Set.of("mouse"), Grams.of(30), mostPieces),
        new Animal.Programme(
            new Schedule.Every(30, day(3)),
            new MealSize.Fixed(Grams.of(50), tolerance),
            importance,
            Animal.Leeway.NONE),
        List.of(),
        Period.ALWAYS);
  }

  /** Two mice are 50 g; one is too little, and of one piece there is none that would do. */
  @Test
  void two_smaller_pieces_do_for_a_larger_one_where_allowed() {
    SmallWorld two = new SmallWorld(5).stock("S", 2, 9).animal(animal(2, Importance.MAY_SLIDE));
    assertThat(optimum(two)).isEqualTo(costs("0"));
    SmallWorld one = new SmallWorld(5).stock("S", 2, 9).animal(animal(1, Importance.MAY_SLIDE));
    assertThat(optimum(one)).isEqualTo(new Standing(0, 1, 0, Money.ZERO));
    SmallWorld tooFew = new SmallWorld(5).stock("S", 1, 9).animal(animal(2, Importance.MUST));
    assertThat(optimum(tooFew)).isEqualTo(unmet(1, "0"));
  }

  /** Two pieces are there for Amber's meal or for the guest's: the must-meal comes first. */
  @Test
  void a_must_meal_comes_before_all_others() {
    SmallWorld world =
        new SmallWorld(5)
            .stock("S", 2, 9)
            .animal(animal(2, Importance.MAY_SKIP))
            .need(need("20", "30"));
    assertThat(allowed(eaten(world, 3, 1)).standing()).isEqualTo(new Standing(0, 1, 0, Money.ZERO));
    assertThat(optimum(world)).isEqualTo(new Standing(0, 1, 0, Money.ZERO));
  }

  /** Where every meal must be met, three meals out of two pieces are impossible. */
  @Test
  void all_meals_are_met_or_there_is_no_plan() {
    SmallWorld enough = new SmallWorld(1).stock("S", 3, 9).need(1, 3).everyMeal();
    allowed(new ByHand(enough.world()).eat("day 1", "S"), "0");
    assertThat(optimum(enough)).isEqualTo(costs("0"));
    SmallWorld tooFew = new SmallWorld(1).stock("S", 2, 9).need(1, 3).everyMeal();
    refused(new ByHand(tooFew.world()).eat("day 1", 2, "S"), RULE);
    Answer answer = Engine.solve(tooFew.world(), Limits.ofSeconds(600), Watch.NONE);
    assertThat(answer).isInstanceOf(Answer.Impossible.class);
    assertThat(((Answer.Impossible) answer).clash())
        .anySatisfy(says -> assertThat(says).contains("day 1", "3 meals"));
  }
}
