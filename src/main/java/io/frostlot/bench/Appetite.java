package io.frostlot.bench;

import io.frostlot.forecast.Meal;
import io.frostlot.forecast.Projection;
import io.frostlot.keeping.Animal;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/** What the animals are expected to eat: sums over their meals at target grams. */
final class Appetite {
  private static final double KG_PER_LITRE = 0.45;
  private final TreeMap<LocalDate, Double> gramsByDay = new TreeMap<>();
  private final TreeSet<Long> targetsMg = new TreeSet<>();
  private double goods;

  Appetite(List<Animal> animals, Period planning) {
    for (Animal animal : animals) {
      for (Meal meal : Projection.meals(animal, planning)) {
        double grams = meal.prey().window().target().toDouble();
        gramsByDay.merge(meal.days().best(), grams, Double::sum);
        targetsMg.add(meal.prey().window().target().milligrams());
        goods += Prey.price(grams);
      }
    }
  }

  /** Money for all of it at the usual price, one piece a meal, mostly in large packs. */
  double goods() {
    return goods;
  }

  double kg() {
    return kg(new Period(LocalDate.MIN, LocalDate.MAX));
  }

  double kg(Period within) {
    return gramsByDay.subMap(within.from(), true, within.to(), true).values().stream()
            .mapToDouble(grams -> grams)
            .sum()
        / 1000;
  }

  /**
   * Kilograms left over in opened packs at any time: half a pack of each size that is eaten.
   *
   * @param packFactor times the usual pack count
   */
  double openedKg(int packFactor) {
    return targetsMg.stream()
            .mapToDouble(mg -> mg / 1000.0)
            .map(grams -> grams * Prey.packCount(grams) * packFactor / 2)
            .sum()
        / 1000;
  }

  /** The days from a first one in which as much is eaten as asked for, at least 7, at most 42. */
  Period eating(double kg, LocalDate from) {
    LocalDate to = from.plusDays(6);
    while (ChronoUnit.DAYS.between(from, to) < 41 && kg(new Period(from, to)) < kg) {
      to = to.plusDays(1);
    }
    return new Period(from, to);
  }

  static double litres(double kg) {
    return kg / KG_PER_LITRE;
  }
}
