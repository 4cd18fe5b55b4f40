package io.frostlot.plan;

import java.util.List;

/**
 * A plan beside habits.
 *
 * @param habits for which a plan was found
 * @param unfinished in a few words, habits for which none was found in their share of the time
 */
public record Comparison(List<Habit> habits, List<String> unfinished) implements SecondLook {
  public Comparison {
    habits = List.copyOf(habits);
    unfinished = List.copyOf(unfinished);
  }
}
