package io.frostlot.oracle;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Option;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Grams;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import io.frostlot.units.SizeBand;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.IntStream;

/**
 * The meals of a world once more, from its scenario: on which days each may come ({@link
 * OracleDays}), and what would do. What the world says of its meals is not looked at.
 */
public final class OracleMeals {
  private final Scenario scenario;
  private final Collection<Item> items;

  private OracleMeals(World world) {
    scenario = world.scenario();
    items = world.items().values();
  }

  /** Those of the planning days, then of the days after, each by best day and name. */
  public static List<Demand> of(World world) {
    return new OracleMeals(world).all();
  }

  private List<Demand> all() {
    List<Meal> planned = new ArrayList<>(meals(scenario.planning()));
    scenario.collection().needs().forEach(need -> planned.add(need.toMeal()));
    List<Demand> all = new ArrayList<>();
    for (Meal meal : inOrder(planned)) {
      all.add(new Demand(meal, options(meal), false, Money.ZERO));
    }
    int days = scenario.policy().tail().days();
    LocalDate first = scenario.planning().to().plusDays(1);
    for (Meal meal :
        inOrder(days == 0 ? List.of() : meals(new Period(first, first.plusDays(days - 1L))))) {
      LocalDate best = meal.days().best();
      Meal.Days only = new Meal.Days(best, best, best);
      Meal onlyThen = new Meal(meal.id(), meal.eater(), 1, only, meal.prey(), meal.importance());
      List<Option> options = options(meal);
      tailPrice(options).ifPresent(price -> all.add(new Demand(onlyThen, options, true, price)));
    }
    return all;
  }

  private static List<Meal> inOrder(List<Meal> meals) {
    return meals.stream()
        .sorted(Comparator.comparing((Meal meal) -> meal.days().best()).thenComparing(Meal::id))
        .toList();
  }

  private List<Meal> meals(Period within) {
    List<Meal> meals = new ArrayList<>();
    for (Animal animal : scenario.collection().animals()) {
      for (OracleDays.Due due : new OracleDays(animal, within).all()) {
        meals.add(
            new Meal(
                animal.name() + " " + due.intended(),
                animal.name(),
                1,
                days(due.best(), due.days()),
                prey(animal, animal.massOn(due.intended())),
                animal.programme().importance()));
      }
    }
    return meals;
  }

  private static Meal.Days days(LocalDate best, SortedSet<LocalDate> days) {
    Set<LocalDate> closed = new HashSet<>();
    days.first().datesUntil(days.last()).filter(day -> !days.contains(day)).forEach(closed::add);
    return new Meal.Days(days.first(), best, days.last(), closed);
  }

  private static Meal.Prey prey(Animal animal, Grams mass) {
    Animal.Diet diet = animal.diet();
    return new Meal.Prey(
        diet.kinds(),
        animal.programme().size().windowFor(mass),
        diet.largest().forMass(mass),
        diet.mostPieces(),
        diet.plate().change() instanceof Plate.Never never ? Set.of(never.kept()) : Set.of());
  }

  private List<Option> options(Meal meal) {
    List<Option> all = new ArrayList<>();
    for (Item item : items) {
      boolean taken =
          meal.prey().kinds().contains(item.kind())
              && item.grams().most().milligrams() <= meal.prey().largestPiece().milligrams();
      for (int n = 1; taken && n <= meal.prey().mostPieces(); n++) {
        long milligrams = n * item.grams().mean().milligrams();
        if (meal.prey().window().least().milligrams() <= milligrams
            && milligrams <= meal.prey().window().most().milligrams()) {
          all.add(new Option(item, n));
        }
      }
    }
    return meal.prey().kept().stream().findFirst().map(kept -> kept(kept, all)).orElse(all);
  }

  /**
   * Of an animal that never changes: what it keeps to; else the next larger size of that kind, else
   * the next smaller, else anything.
   */
  private static List<Option> kept(SizeBand kept, List<Option> all) {
    int largest = 30;
    List<Integer> byPreference = new ArrayList<>();
    IntStream.rangeClosed(kept.doubling(), largest).forEach(byPreference::add);
    IntStream.iterate(kept.doubling() - 1, size -> size > -largest, size -> size - 1)
        .forEach(byPreference::add);
    return byPreference.stream()
        .map(size -> all.stream().filter(o -> isOf(kept.kind(), size, o.item())).toList())
        .filter(some -> !some.isEmpty())
        .findFirst()
        .orElse(all);
  }

  /** Of a kind, and of a mean mass from a power of two of grams up to the next. */
  static boolean isOf(String kind, int power, Item item) {
    double grams = item.grams().mean().milligrams() / 1000.0;
    return item.kind().equals(kind)
        && Math.pow(2, power) <= grams
        && grams < Math.pow(2, power + 1);
  }

  /** The least list price of any option, per piece to seven digits, in all to four decimals. */
  private Optional<Money> tailPrice(List<Option> options) {
    List<BigDecimal> prices = new ArrayList<>();
    for (Supplier supplier : scenario.suppliers()) {
      for (Pack pack : supplier.sheet().packs()) {
        for (Option option : options) {
          if (pack.parts().stream().anyMatch(part -> part.item().equals(option.item()))) {
            BigDecimal pieces = BigDecimal.valueOf(pack.pieces());
            BigDecimal each = pack.price().amount().divide(pieces, MathContext.DECIMAL32);
            prices.add(each.multiply(BigDecimal.valueOf(option.pieces())));
          }
        }
      }
    }
    return prices.stream()
        .min(BigDecimal::compareTo)
        .map(price -> new Money(price.setScale(4, RoundingMode.HALF_UP)));
  }
}
