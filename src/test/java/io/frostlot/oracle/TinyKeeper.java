package io.frostlot.oracle;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.FeedingDays;
import io.frostlot.keeping.Handling;
import io.frostlot.keeping.Importance;
import io.frostlot.keeping.Lateness;
import io.frostlot.keeping.MealSize;
import io.frostlot.keeping.Plate;
import io.frostlot.keeping.Schedule;
import io.frostlot.plan.Scenario;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.Keeps;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/**
 * A random keeper: one to three animals, one or two freezers, what lies in them and is under way.
 */
final class TinyKeeper {
  private final Dice dice;
  private final Period planning;
  private final List<Item> items;
  private final TinyPlates plates;
  private final List<Freezer> freezers;
  private final List<Period> away;

  TinyKeeper(Dice dice, Period planning, List<Item> items) {
    this.dice = dice;
    this.planning = planning;
    this.items = items;
    plates = new TinyPlates(dice, items);
    freezers = new TinyFreezers(dice, planning).all();
    away = dice.has(Feature.AWAY) ? List.of(dice.days(dice.between(0, 1))) : List.of();
  }

  /** When nothing can be received. */
  List<Period> away() {
    return away;
  }

  private LocalDate day(int offset) {
    return planning.from().plusDays(offset);
  }

  private int days() {
    return (int) (planning.to().toEpochDay() - planning.from().toEpochDay()) + 1;
  }

  private Keeps keeps(int useBy) {
    boolean best = dice.has(Feature.BEST_BEFORE);
    return new Keeps(day(best ? dice.between(-2, useBy) : useBy), day(useBy));
  }

  Scenario.Larder larder() {
    List<StockLot> stock = new ArrayList<>();
    if (dice.has(Feature.STOCK)) {
      for (int i = dice.between(1, 2); i > 0; i--) {
        stock.add(
            new StockLot(
                "S" + i,
                dice.oneOf(items),
                dice.between(1, 3),
                dice.oneOf(freezers).name(),
                day(-dice.between(2, 9)),
                keeps(dice.between(-1, days()))));
      }
    }
    List<PlacedLot> placed = new ArrayList<>();
    if (dice.has(Feature.PLACED)) {
      int earliest = dice.between(0, days() - 1);
      int latest =
          dice.has(Feature.UNCERTAIN_ARRIVAL) ? dice.between(earliest, days() - 1) : earliest;
      placed.add(
          new PlacedLot("P1", dice.oneOf(items), dice.between(1, 2), day(earliest), day(latest)));
    }
    return new Scenario.Larder(freezers, stock, placed);
  }

  Scenario.Collection collection() {
    List<Animal> animals = new ArrayList<>();
    if (dice.has(Feature.ADEQUACY)
        || dice.has(Feature.KIND_SHARES)
        || dice.has(Feature.SELDOM_CHANGES)) {
      Animal animal = daily();
      animals.add(animal.withDiet(animal.diet().withPlate(plates.any())));
      if (!dice.has(Feature.ADEQUACY) && dice.oneIn(2)) {
        animals.add(animals.get(0).named("animal 2"));
      }
    }
    int count = animals.isEmpty() ? dice.between(1, 2) : 0;
    for (int i = 1; i <= count; i++) {
      animals.add(animal("animal " + i));
    }
    if (dice.has(Feature.FEEDING_DAYS)) {
      animals.replaceAll(animal -> animal.withFeedingDays(feedingDays()));
    }
    if (!away.isEmpty() && dice.oneIn(2)) {
      animals.replaceAll(this::notFedEither);
    }
    if (dice.has(Feature.HANDLING)) {
      animals.replaceAll(animal -> animal.withHandling(List.of(handling())));
    }
    return new Scenario.Collection(animals, dice.has(Feature.NEED) ? List.of(need()) : List.of());
  }

  private FeedingDays feedingDays() {
    List<Period> away = dice.oneIn(3) ? List.of(dice.days(1)) : List.of();
    return new FeedingDays("rack", Set.copyOf(dice.someOf(List.of(DayOfWeek.values()))), away);
  }

  private Animal notFedEither(Animal animal) {
    List<Period> all = new ArrayList<>(animal.feedingDays().away());
    all.addAll(away);
    return animal.withFeedingDays(animal.feedingDays().withAway(all));
  }

  /** On a day or two, of the planning or soon after. */
  private Handling handling() {
    int from = dice.between(0, days() + 2);
    return new Handling(new Period(day(from), day(from + dice.between(0, 1))), "show");
  }

  private Animal animal(String name) {
    boolean big = isBig(dice.oneOf(items));
    boolean two = dice.has(Feature.TWO_PIECES) && dice.oneIn(2);
    Grams target = Grams.of(big || two ? 20 : 10);
    boolean never = dice.has(Feature.NEVER_CHANGES);
    MealSize.Tolerance tolerance =
        new MealSize.Tolerance(
            Percent.of(never || dice.oneIn(4) ? "50" : "75"), Percent.of(never ? "200" : "125"));
    Animal.Leeway leeway =
        dice.has(Feature.LEEWAY)
            ? new Animal.Leeway(dice.between(0, 1), dice.between(0, 2), limits())
            : dice.has(Feature.LATE_LIMIT)
                ? new Animal.Leeway(0, dice.between(1, 2), limits())
                : Animal.Leeway.NONE;
    int spread = dice.has(Feature.SORTED_BAGS) && dice.oneIn(2) ? 1 : big ? 10 : 5;
    Animal.Diet diet =
        new Animal.Diet(Set.of("mouse", "rat"), Grams.of((big ? 20 : 10) + spread), two ? 2 : 1);
    return new Animal(
        name,
        new Curve.Constant(Grams.of(200)),
        planning.from(),
        never ? diet.withPlate(new Plate(new TreeMap<>(), plates.never())) : diet,
        new Animal.Programme(
            new Schedule.Every(dice.between(2, 4), day(dice.between(0, 3))),
            new MealSize.Fixed(target, tolerance),
            dice.oneOf(Importance.values()),
            leeway),
        List.of(),
        Period.ALWAYS);
  }

  private List<Lateness> limits() {
    return dice.has(Feature.LATE_LIMIT)
        ? List.of(new Lateness(dice.oneOf(Lateness.Counted.values()), dice.between(0, 1)))
        : List.of();
  }

  /**
   * Eats every day, now and then every other, or five or six times in eight weeks, more than the
   * small and less than the big.
   */
  private Animal daily() {
    Grams target = Grams.of(dice.between(13, 17));
    MealSize.Tolerance tolerance =
        new MealSize.Tolerance(Percent.of("50"), Percent.of(dice.oneOf("125", "170")));
    return new Animal(
        "animal 1",
        new Curve.Constant(Grams.of(200)),
        planning.from(),
        new Animal.Diet(Set.of("mouse", "rat"), Grams.of(30), dice.between(1, 2)),
        new Animal.Programme(
            dice.isLong()
                ? new Schedule.Every(dice.between(9, 12), day(dice.between(0, 3)))
                : new Schedule.Every(dice.has(Feature.FEW_MEALS) ? 2 : 1, day(0)),
            new MealSize.Fixed(target, tolerance),
            dice.oneOf(Importance.values()),
            Animal.Leeway.NONE),
        List.of(),
        Period.ALWAYS);
  }

  private Need need() {
    int earliest = dice.between(0, days() - 1);
    int latest = dice.has(Feature.LEEWAY) ? dice.between(earliest, days() - 1) : earliest;
    boolean big = isBig(dice.oneOf(items));
    return new Need(
        "guests",
        big && dice.has(Feature.KIND_SHARES) ? "rat" : "mouse",
        Grams.of(big ? 15 : 5),
        Grams.of(big ? 25 : 15),
        dice.between(1, 3),
        new Meal.Days(day(earliest), day(dice.between(earliest, latest)), day(latest)));
  }

  private static boolean isBig(Item item) {
    return item.name().equals("big");
  }
}
