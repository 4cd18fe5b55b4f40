package io.frostlot.program;

import static io.frostlot.program.SmallWorld.day;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.Plate;
import io.frostlot.keeping.Schedule;
import io.frostlot.units.Grams;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.util.List;
import java.util.Set;

/** Animals that get one mouse or rat of 10 to 70 g at a meal. */
final class Eaters {
  private Eaters() {}

  /** Every other day from day 2, on that day. */
  static Animal onEvenDays(String name, Plate plate) {
    return from(new Schedule.Every(2, day(2)), name, Animal.Leeway.NONE, plate);
  }

  /** Every third day from day 2, or near it. */
  static Animal everyThirdDay(String name, Animal.Leeway leeway) {
    return from(new Schedule.Every(3, day(2)), name, leeway, Plate.ANY);
  }

  private static Animal from(Schedule days, String name, Animal.Leeway leeway, Plate plate) {
    return new Animal(
        name,
        new Curve.Constant(Grams.of(500)),
        day(1),
        new Animal.Diet(Set.of("mouse", "rat"), Grams.of(70), 1).withPlate(plate),
        new Animal.Programme(
            days,
            new MealSize.Fixed(
                Grams.of(40), new MealSize.Tolerance(Percent.of("25"), Percent.of("175"))),
            Importance.MAY_SLIDE,
            leeway),
        List.of(),
        Period.ALWAYS);
  }
}
