package io.frostlot.plan;

import io.frostlot.supply.Pack;
import java.util.List;
import java.util.OptionalDouble;

/** What is found out about suppliers, one thing after another. */
public sealed interface SupplierFinding {
  /** The best plan with all of them. */
  record All(Solved plan) implements SupplierFinding {}

  /**
   * The best plan with a part of them.
   *
   * @param supplier id
   * @param way how it is treated
   * @param difference from the plan with all; none where no plan was found
   */
  record Part(String supplier, Way way, List<Difference> difference) implements SupplierFinding {
    public Part {
      difference = List.copyOf(difference);
    }
  }

  /** How a supplier is treated. */
  enum Way {
    LEFT_OUT,
    ALONE
  }

  /** Price sheets side by side, by kind and grams. */
  record Sheets(List<Price> prices) implements SupplierFinding {
    public Sheets {
      prices = List.copyOf(prices);
    }
  }

  /**
   * What an item costs by what is delivered, from the pack that is cheapest by the piece; money in
   * major units.
   *
   * @param supplier id
   * @param per100g mean grams
   * @param landed the same with its share of shipping by mass, as in the plans found; empty where
   *     nothing was ordered from there
   * @param perMeal of the meals that it could be, on average; empty where there is none
   * @param per100kcal empty where the energy is not known
   */
  record Price(
      String supplier,
      Pack pack,
      double per100g,
      OptionalDouble landed,
      OptionalDouble perMeal,
      OptionalDouble per100kcal) {}
}
