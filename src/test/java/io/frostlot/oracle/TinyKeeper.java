package io.frostlot.oracle;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Curve;
import io.frostlot.keeping.FeedingDays;
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
import io.frostlot.units.Litres;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import io.frostlot.units.SizeBand;
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
  private final List<Freezer> freezers = new ArrayList<>();

  TinyKeeper(Dice dice, Period planning, List<Item> items) {
    this.dice = dice;
    this.planning = planning;
    this.items = items;
    boolean second = dice.has(Feature.SECOND_FREEZER);
    freezers.add(freezer("A", second ? dice.between(1, 2) : dice.between(2, 4), true));
    if (second) {
      freezers.add(freezer("B", dice.between(1, 2), !dice.oneIn(4)));
    }
  }

  /** Holds so many big pieces, or half as many again small ones, and a bit. */
  private Freezer freezer(String name, int bigPieces, boolean inUse) {
    int life = dice.between(2, 5);
    Freezer.Life lives =
        dice.has(Feature.SMALL_PREY_LIFE)
            ? new Freezer.Life(life, Grams.of(15), dice.between(1, life))
            : Freezer.Life.of(life);
    if (dice.has(Feature.BEST_BEFORE)) {
      lives = lives.withBest(new Freezer.Best(dice.between(1, life)));
    }
    Litres usable = new Litres(bigPieces * 50_500L + dice.between(0, 30) * 1000L);
    Freezer freezer = new Freezer(name, usable, "household", lives, inUse);
    return dice.has(Feature.FREEZER_LIMIT)
        ? freezer.withAccess(new Freezer.Access(inUse, Freezer.Company.NONE, limits(bigPieces)))
        : freezer;
  }

  /** Room for a big piece or two less, now and then. */
  private List<Freezer.Limit> limits(int bigPieces) {
    List<Freezer.Limit> limits = new ArrayList<>();
    for (int i = dice.between(0, 2); i > 0; i--) {
      Litres litres = new Litres(dice.between(0, bigPieces - 1) * 50_500L);
      LocalDate from = day(dice.between(-1, days() + 1));
      limits.add(new Freezer.Limit(new Period(from, from.plusDays(dice.between(0, 3))), litres));
    }
    return limits;
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
      animals.add(animal.withDiet(animal.diet().withPlate(plate())));
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
    return new Scenario.Collection(animals, dice.has(Feature.NEED) ? List.of(need()) : List.of());
  }

  private FeedingDays feedingDays() {
    List<Period> away = dice.oneIn(3) ? List.of(dice.days(1)) : List.of();
    return new FeedingDays("rack", Set.copyOf(dice.someOf(List.of(DayOfWeek.values()))), away);
  }

  private Animal animal(String name) {
    boolean big = isBig(dice.oneOf(items));
    boolean two = dice.has(Feature.TWO_PIECES) && dice.oneIn(2);
    Grams target = Grams.of(big || two ? 20 : 10);
    MealSize.Tolerance tolerance =
        new MealSize.Tolerance(Percent.of(dice.oneIn(4) ? "50" : "75"), Percent.of("125"));
    Animal.Leeway leeway =
        dice.has(Feature.LEEWAY)
            ? new Animal.Leeway(dice.between(0, 1), dice.between(0, 2), limits())
            : dice.has(Feature.LATE_LIMIT)
                ? new Animal.Leeway(0, dice.between(1, 2), limits())
                : Animal.Leeway.NONE;
    int spread = dice.has(Feature.SORTED_BAGS) && dice.oneIn(2) ? 1 : big ? 10 : 5;
    return new Animal(
        name,
        new Curve.Constant(Grams.of(200)),
        planning.from(),
        new Animal.Diet(Set.of("mouse", "rat"), Grams.of((big ? 20 : 10) + spread), two ? 2 : 1),
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

  /** Of the 56 meals of eight weeks, 2 % are one. */
  private Plate plate() {
    TreeMap<String, Percent> shares = new TreeMap<>();
    if (dice.has(Feature.KIND_SHARES)) {
      shares.put(dice.oneOf("mouse", "rat"), Percent.of(dice.oneOf("0", "2", "4")));
    }
    if (!dice.has(Feature.SELDOM_CHANGES)) {
      return new Plate(shares, new Plate.Free());
    }
    Item item = dice.oneOf(items);
    Set<SizeBand> before =
        dice.oneIn(2) ? Set.of() : Set.of(SizeBand.of(item.kind(), item.grams().mean()));
    return new Plate(
        shares,
        dice.oneIn(2) ? new Plate.Keep(before) : new Plate.Seldom(dice.between(2, 4), before));
  }

  /** Eats every day, now and then every other, more than the small and less than the big. */
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
            new Schedule.Every(dice.has(Feature.FEW_MEALS) ? 2 : 1, day(0)),
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
