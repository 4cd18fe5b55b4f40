package io.frostlot.app;

import io.frostlot.keeping.Animal;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Guess;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The guesses that a world rests on, and the world where one of them is otherwise. Between what
 * each likely lies is our choice: the mean of pieces that were never weighed half way to either end
 * of the band of their size word, an animal {@value #ANIMAL} of its mass, prices of a sheet older
 * than {@value #OLD_DAYS} days {@value #OLD}, prices after the planning days {@value #LATER}, the
 * room of a freezer {@value #ROOM} and that of prey {@value #PREY} less or more; up to {@value
 * #SKIPPED_PERCENT} % of all meals refused.
 */
final class Guessing {
  private static final double ANIMAL = 0.1;
  private static final int OLD_DAYS = 60;
  private static final double OLD = 0.05;
  private static final double LATER = 0.1;
  private static final double ROOM = 0.1;
  private static final double PREY = 0.15;
  private static final double SKIPPED_PERCENT = 10;
  private static final double HUNDRED = 100;

  private Guessing() {}

  /** All of them. */
  static List<Guess> of(World world) {
    Scenario scenario = world.scenario();
    List<Guess> all = new ArrayList<>();
    scenario.suppliers().stream()
        .flatMap(it -> it.sheet().packs().stream())
        .map(Pack::item)
        .distinct()
        .filter(item -> item.grams().guessed() && item.grams().isSortable())
        .forEach(
            item -> all.add(new Guess(Guess.Kind.PIECE_GRAMS, item.id(), within(item.grams()))));
    scenario.collection().animals().stream()
        .filter(Guessing::goesByMass)
        .forEach(
            animal ->
                all.add(around(Guess.Kind.ANIMAL_GRAMS, animal.name(), start(animal), ANIMAL)));
    scenario.suppliers().stream()
        .filter(it -> it.sheet().dated().plusDays(OLD_DAYS).isBefore(scenario.planning().from()))
        .forEach(it -> all.add(around(Guess.Kind.OLD_PRICES, it.id(), HUNDRED, OLD)));
    if (world.demands().stream().anyMatch(Demand::tail)) {
      all.add(around(Guess.Kind.LATER_PRICES, "", HUNDRED, LATER));
    }
    scenario.larder().freezers().stream()
        .filter(Freezer::inUse)
        .forEach(
            it ->
                all.add(
                    around(Guess.Kind.FREEZER_LITRES, it.name(), it.usable().toDouble(), ROOM)));
    all.add(around(Guess.Kind.PREY_LITRES, "", HUNDRED, PREY));
    all.add(new Guess(Guess.Kind.SKIPPED_MEALS, "", new Guess.Ends(0, 0, SKIPPED_PERCENT)));
    return all;
  }

  private static Guess around(Guess.Kind kind, String of, double assumed, double share) {
    return new Guess(kind, of, Guess.Ends.around(assumed, share));
  }

  private static Guess.Ends within(Item.Spread grams) {
    double mean = grams.mean().toDouble();
    return new Guess.Ends(
        (grams.least().toDouble() + mean) / 2, mean, (mean + grams.most().toDouble()) / 2);
  }

  private static double start(Animal animal) {
    return animal.growth().massAfter(0).toDouble();
  }

  /** Do its meals, or its largest piece, depend on what it weighs? */
  private static boolean goesByMass(Animal animal) {
    Grams light = Grams.of(start(animal) * (1 - ANIMAL));
    Grams heavy = Grams.of(start(animal) * (1 + ANIMAL));
    return !animal
            .programme()
            .size()
            .windowFor(light)
            .equals(animal.programme().size().windowFor(heavy))
        || !animal.diet().largest().forMass(light).equals(animal.diet().largest().forMass(heavy));
  }

  /** The world where a guess has another value. */
  static World at(World world, Guess guess, double value) {
    Scenario scenario = world.scenario();
    double share = value / HUNDRED;
    return switch (guess.kind()) {
      case PIECE_GRAMS -> world.projectedAgain(heavier(world, guess.of(), Grams.of(value)));
      case ANIMAL_GRAMS ->
          world.projectedAgain(
              scenario.withAnimals(
                  scenario.collection().animals().stream()
                      .map(it -> it.name().equals(guess.of()) ? it.weighing(Grams.of(value)) : it)
                      .toList()));
      case OLD_PRICES ->
          world.projectedAgain(
              withSheets(
                  scenario,
                  it ->
                      it.id().equals(guess.of())
                          ? it.withSheet(
                              it.sheet().times(BigDecimal.valueOf(share), world.decimals()))
                          : it));
      case LATER_PRICES -> laterPrices(world, BigDecimal.valueOf(share));
      case FREEZER_LITRES ->
          Loosened.freezers(world, it -> it.name().equals(guess.of()) ? room(it, value) : it);
      case PREY_LITRES -> Loosened.freezers(world, it -> room(it, it.usable().toDouble() / share));
      case SKIPPED_MEALS -> SkippedMeals.thinned(world, share);
    };
  }

  private static Scenario heavier(World world, String id, Grams mean) {
    Item item = world.items().get(id);
    Item other = item.weighing(item.grams().withMean(mean));
    Scenario scenario = world.scenario();
    Scenario.Larder larder = scenario.larder();
    return withSheets(
            scenario,
            it ->
                it.withSheet(
                    it.sheet()
                        .withPacks(
                            it.sheet().packs().stream()
                                .map(p -> p.item().id().equals(id) ? p.withItem(other) : p)
                                .toList())))
        .withLarder(
            new Scenario.Larder(
                larder.freezers(),
                larder.stock().stream()
                    .map(lot -> lot.item().id().equals(id) ? lot.withItem(other) : lot)
                    .toList(),
                larder.placed().stream()
                    .map(lot -> lot.item().id().equals(id) ? lot.withItem(other) : lot)
                    .toList()));
  }

  private static Scenario withSheets(Scenario scenario, UnaryOperator<Supplier> change) {
    return scenario.withSuppliers(scenario.suppliers().stream().map(change).toList());
  }

  private static World laterPrices(World world, BigDecimal share) {
    return world.withDemands(
        world.demands().stream()
            .map(it -> new Demand(it.meal(), it.options(), it.tail(), later(it.tailPrice(), share)))
            .toList());
  }

  private static Money later(Money price, BigDecimal share) {
    return price.times(share, 4);
  }

  private static Freezer room(Freezer freezer, double litres) {
    return freezer.withUsable(Litres.of(BigDecimal.valueOf(litres)));
  }
}
