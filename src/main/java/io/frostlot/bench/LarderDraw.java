package io.frostlot.bench;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.forecast.Projection;
import io.frostlot.keeping.Animal;
import io.frostlot.plan.Scenario;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Draws what a keeper has at home: freezers of two kinds, the first weeks' food in hand and a pack
 * under way. Nothing of it is left to chance.
 */
final class LarderDraw {
  private final RoomSize size;
  private final LocalDate first;

  LarderDraw(RoomSize size, LocalDate first) {
    this.size = size;
    this.first = first;
  }

  /**
   * Freezers and what is there.
   *
   * @param litres of all freezers
   * @param supplier from whom it was ordered
   */
  Scenario.Larder larder(double litres, List<Animal> animals, Supplier supplier) {
    return new Scenario.Larder(freezers(litres), stock(animals, supplier), placed(supplier));
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

  /** What the first weeks need and a tenth, of the pieces that the first supplier sells. */
  private List<StockLot> stock(List<Animal> animals, Supplier supplier) {
    List<Item> items = supplier.sheet().packs().stream().map(Pack::item).distinct().toList();
    Map<Item, Integer> pieces = new TreeMap<>((Item a, Item b) -> a.id().compareTo(b.id()));
    Period weeks = new Period(first, first.plusDays(size == RoomSize.XS ? 6 : 20));
    for (Animal animal : animals) {
      for (Meal meal : Projection.meals(animal, weeks)) {
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
                    first.minusDays(20),
                    first.plusDays(100))));
    return stock;
  }

  private List<PlacedLot> placed(Supplier supplier) {
    Pack pack = supplier.sheet().packs().get(supplier.sheet().packs().size() / 3);
    return List.of(
        new PlacedLot(
            "under way", pack.item(), pack.pieces(), first.plusDays(9), first.plusDays(10)));
  }
}
