package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Alike;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Demands;
import io.frostlot.units.Money;
import java.util.List;

/**
 * Meals that the program need not tell apart: same choices, same importance, same tail price.
 *
 * @param keeper whose animals eat; empty where there is one keeper
 * @param alike its meals, by the first of those alike, and none twice
 * @param choices ways and times to serve one meal
 * @param must counts among the must-meals
 * @param tail may be bought at {@code tailPrice}
 * @param tie what else the members have in common
 */
record DemandClass(
    String keeper,
    List<Alike> alike,
    List<Choice> choices,
    boolean must,
    boolean tail,
    Money tailPrice,
    MealTies.Tie tie) {
  DemandClass {
    alike = List.copyOf(alike);
    choices = List.copyOf(choices);
  }

  /**
   * One option in one segment of its item.
   *
   * @param lateDays of the best day in that segment
   * @param sparedNights planning nights from that day on, where a night is charged; else 0
   */
  record Choice(Option option, int segment, long lateDays, int sparedNights) {}

  /** Are its members tied to other meals of the same animals? */
  boolean isTied() {
    return !tie.equals(MealTies.NONE);
  }

  /** One of them, the first. */
  Demand first() {
    return alike.get(0).first();
  }

  /** The demands, in canonical order. */
  List<Demand> members() {
    return alike.size() == 1
        ? alike.get(0).members()
        : alike.stream()
            .flatMap(some -> some.members().stream())
            .sorted(Demands.CANONICAL)
            .toList();
  }

  int count() {
    return alike.stream().mapToInt(Alike::count).sum();
  }
}
