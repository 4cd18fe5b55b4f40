package io.frostlot.app;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Guess;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.units.Grams;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A snake of 500 g eats a tenth of its mass each week; the chest holds 10 litres. */
class GuessingTest {
  @TempDir private Path folder;

  private World world() {
    Scenario scenario =
        new OneMouseShop(OneMouseShop.SINGLES, new OneMouseShop.Keeping(60, 10))
            .world(folder)
            .scenario();
    Animal ash = scenario.collection().animals().get(0);
    MealSize tenth =
        new MealSize.ShareOfMass(
            Percent.of("10"), new MealSize.Tolerance(Percent.of("80"), Percent.of("125")));
    Animal.Programme programme =
        new Animal.Programme(
            ash.programme().schedule(), tenth, Importance.MAY_SLIDE, ash.programme().days());
    return World.of(scenario.withAnimals(List.of(ash.withProgramme(programme))));
  }

  private static World at(World world, Guess.Kind kind, boolean high) {
    Guess guess =
        Guessing.of(world).stream().filter(it -> it.kind() == kind).findFirst().orElseThrow();
    return Guessing.at(world, guess, high ? guess.ends().high() : guess.ends().low());
  }

  private static Money tailPrice(World world) {
    return world.demands().stream().filter(Demand::tail).findFirst().orElseThrow().tailPrice();
  }

  private static double litres(World world) {
    List<Freezer> freezers = world.scenario().larder().freezers();
    return freezers.get(0).usable().toDouble();
  }

  /** A tenth of 450 g and 550 g. */
  @Test
  void an_animal_may_weigh_a_tenth_less_or_more() {
    World world = world();
    assertThat(target(at(world, Guess.Kind.ANIMAL_GRAMS, false))).isEqualTo(Grams.of(45));
    assertThat(target(at(world, Guess.Kind.ANIMAL_GRAMS, true))).isEqualTo(Grams.of(55));
  }

  private static Grams target(World world) {
    return world.demands().get(0).meal().prey().window().target();
  }

  /** 10 litres are 9 or 11; prey that takes 15 % more room leaves it as if they were 8.696. */
  @Test
  void room_may_be_less_or_more() {
    World world = world();
    assertThat(litres(at(world, Guess.Kind.FREEZER_LITRES, false))).isEqualTo(9);
    assertThat(litres(at(world, Guess.Kind.FREEZER_LITRES, true))).isEqualTo(11);
    assertThat(litres(at(world, Guess.Kind.PREY_LITRES, true))).isEqualTo(8.695652);
  }

  /** Of 1.00 a mouse. */
  @Test
  void prices_after_the_planning_days_may_be_a_tenth_less_or_more() {
    World world = world();
    assertThat(tailPrice(at(world, Guess.Kind.LATER_PRICES, false))).isEqualTo(Money.of("0.90"));
    assertThat(tailPrice(at(world, Guess.Kind.LATER_PRICES, true))).isEqualTo(Money.of("1.10"));
  }

  /** Every tenth meal: of 30 meals, four planned and 26 after, three. */
  @Test
  void one_meal_in_ten_may_be_refused() {
    World world = world();
    assertThat(world.demands()).hasSize(30);
    assertThat(at(world, Guess.Kind.SKIPPED_MEALS, true).demands()).hasSize(27);
  }

  @Test
  void what_is_known_is_no_guess() {
    assertThat(Guessing.of(world()))
        .extracting(Guess::kind)
        .doesNotContain(Guess.Kind.PIECE_GRAMS, Guess.Kind.OLD_PRICES);
  }
}
