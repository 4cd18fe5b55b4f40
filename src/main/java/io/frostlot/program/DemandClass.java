package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.plan.Demand;
import io.frostlot.units.Money;
import java.util.List;

/**
 * Meals that the program need not tell apart: same choices, same importance, same tail price.
 *
 * @param keeper whose animals eat; empty where there is one keeper
 * @param members the demands, in canonical order
 * @param choices ways and times to serve one meal
 * @param must counts among the must-meals
 * @param tail may be bought at {@code tailPrice}
 * @param tie what else the members have in common
 */
record DemandClass(
    String keeper,
    List<Demand> members,
    List<Choice> choices,
    boolean must,
    boolean tail,
    Money tailPrice,
    MealTies.Tie tie) {
  DemandClass {
    members = List.copyOf(members);
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

  int count() {
    return members.stream().mapToInt(d -> d.meal().count()).sum();
  }
}
