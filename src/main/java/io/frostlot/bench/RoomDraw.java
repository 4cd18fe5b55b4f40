package io.frostlot.bench;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.keeping.Animal;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/**
 * Draws a whole room: an invented collection, its suppliers and freezers, the first weeks' food in
 * hand and some under way, every rule of the program in use. The same seed draws the same room.
 */
public final class RoomDraw {
  private static final LocalDate FIRST = LocalDate.of(2031, 3, 3);
  private final RoomSize size;
  private final long seed;
  private final Period planning;
  private final Chance chance;

  private RoomDraw(RoomSize size, long seed) {
    this.size = size;
    this.seed = seed;
    planning = new Period(FIRST, FIRST.plusDays(7L * size.weeks() - 1));
    chance = new Chance(size, seed);
  }

  /** The room of a size and a seed. */
  public static DrawnRoom of(RoomSize size, long seed) {
    return new RoomDraw(size, seed).room();
  }

  private DrawnRoom room() {
    List<Animal> animals = new AnimalDraw(size, chance, planning).animals();
    Calibration calibration = Calibration.of(size, planning, new Appetite(animals, planning));
    List<Supplier> suppliers = new SupplierDraw(size, chance, planning, calibration).suppliers();
    Scenario scenario =
        new Scenario(
            "Drawn room " + size + " " + seed + " (invented)",
            planning,
            Currency.getInstance("EUR"),
            new Scenario.Collection(animals, needs()),
            new LarderDraw(size, FIRST).larder(calibration.litres(), animals, suppliers.get(0)),
            suppliers,
            List.of(away()),
            policy());
    return new DrawnRoom(size, seed, scenario, calibration);
  }

  private Policy policy() {
    return new Policy(
        Policy.Demand.BEST_EFFORT,
        new Policy.Tail(size.tailDays()),
        Policy.FreezerCheck.AFTER_DELIVERY,
        new Policy.Charges(Money.of("0.0005"), Money.of(2), Money.of(1), Money.of("0.15")),
        new Policy.Safety(2, Percent.of("5")),
        Policy.Adequacy.NONE);
  }

  private Period away() {
    LocalDate from = FIRST.plusDays(size.weeks() * 7L * 47 / 100);
    return new Period(from, from.plusDays(6));
  }

  private List<Need> needs() {
    List<Need> needs = new ArrayList<>();
    for (int i = 1; i <= 2; i++) {
      LocalDate best = FIRST.plusDays(size.weeks() * 7L * i / 3);
      needs.add(
          new Need(
              "guests " + i,
              "mouse",
              Grams.of(10),
              Grams.of(35),
              2 + size.animals() / 30,
              new Meal.Days(best, best, best.plusDays(5))));
    }
    return needs;
  }
}
