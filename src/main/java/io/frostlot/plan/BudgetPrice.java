package io.frostlot.plan;

import io.frostlot.units.Money;
import java.util.Set;

/**
 * What a budget costs.
 *
 * @param without what the best plan without it has over the one shown; by how much the budget
 *     itself is passed counts in neither
 * @param toPay what the orders of the plan without it come to
 */
public record BudgetPrice(Difference without, Money toPay) implements SecondLook {
  private static final Set<String> BUDGET = Set.of("budget");

  /** Between the plan shown and the best found without the budget. */
  public static BudgetPrice between(Solved shown, Solved without) {
    return new BudgetPrice(
        Difference.besides(BUDGET, shown, without),
        without.answer().plan().books().total(Books.Account.CASH));
  }

  /** Percent by which orders and months pass their budget, summed. */
  public static long beyond(Books books) {
    return books.lacking(BUDGET);
  }
}
