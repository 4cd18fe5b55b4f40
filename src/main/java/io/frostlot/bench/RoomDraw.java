package io.frostlot.bench;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Need;
import io.frostlot.forecast.Option;
import io.frostlot.forecast.Projection;
import io.frostlot.keeping.Animal;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

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
    List<Freezer> freezers = freezers(calibration.litres());
    Scenario scenario =
        new Scenario(
            "Drawn room " + size + " " + seed + " (invented)",
            planning,
            Currency.getInstance("EUR"),
            new Scenario.Collection(animals, needs()),
            new Scenario.Larder(
                freezers, stock(animals, suppliers.get(0)), placed(suppliers.get(0))),
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

  /** One opened daily for a quarter, the rest deep; a third one from L on. */
  private List<Freezer> freezers(double litres) {
    List<Freezer> freezers = new ArrayList<>();
    freezers.add(freezer("household", 0.25 * litres, 91));
    boolean three = size.compareTo(RoomSize.L) >= 0;
    freezers.add(freezer("deep", (three ? 0.4 : 0.75) * litres, 182));
    if (three) {
      freezers.add(freezer("second deep", 0.35 * litres, 182));
    }
    return freezers;
  }

  private static Freezer freezer(String name, double litres, int days) {
    return new Freezer(
        name,
        new Litres(Math.round(litres * 10) * 100_000),
        days > 100 ? "deep" : "household",
        new Freezer.Life(days, Grams.of(5), days * 2 / 3),
        true);
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

  /** What the first weeks need and a tenth, of the pieces that the first supplier sells. */
  private List<StockLot> stock(List<Animal> animals, Supplier supplier) {
    List<Item> items = supplier.sheet().packs().stream().map(Pack::item).distinct().toList();
    Map<Item, Integer> pieces = new TreeMap<>((Item a, Item b) -> a.id().compareTo(b.id()));
    Period first = new Period(FIRST, FIRST.plusDays(size == RoomSize.XS ? 6 : 20));
    for (Animal animal : animals) {
      for (Meal meal : Projection.meals(animal, first)) {
        List<Option> options = Projection.options(meal, items);
        if (!options.isEmpty()) {
          Option option = options.get(options.size() / 2);
          pieces.merge(option.item(), option.pieces(), Integer::sum);
        }
      }
    }
    List<StockLot> stock = new ArrayList<>();
    pieces.forEach(
        (item, count) ->
            stock.add(
                new StockLot(
                    String.format(Locale.ROOT, "in hand %02d", stock.size() + 1),
                    item,
                    (count * 11 + 9) / 10,
                    "deep",
                    FIRST.minusDays(20),
                    FIRST.plusDays(100))));
    return stock;
  }

  private List<PlacedLot> placed(Supplier supplier) {
    Pack pack = supplier.sheet().packs().get(supplier.sheet().packs().size() / 3);
    return List.of(
        new PlacedLot(
            "under way", pack.item(), pack.pieces(), FIRST.plusDays(9), FIRST.plusDays(10)));
  }
}
