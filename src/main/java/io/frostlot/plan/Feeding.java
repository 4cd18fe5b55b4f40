package io.frostlot.plan;

import io.frostlot.forecast.Option;
import java.time.LocalDate;
import java.util.List;

/**
 * Meals served on one day by one option, and the lots that the pieces come from.
 *
 * @param mealId id of the meal
 * @param meals how many of its count
 * @param draws together meals x option pieces
 */
public record Feeding(String mealId, LocalDate day, Option option, int meals, List<Draw> draws) {
  public Feeding {
    draws = List.copyOf(draws);
  }

  /** Pieces taken from one lot. */
  public record Draw(String lotId, int pieces) {}

  public int pieces() {
    return meals * option.pieces();
  }
}
