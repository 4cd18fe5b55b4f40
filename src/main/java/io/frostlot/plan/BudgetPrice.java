package io.frostlot.plan;

import io.frostlot.units.Money;

/**
 * What a budget costs.
 *
 * @param without what the best plan without it has over the one shown; by how much the budget
 *     itself is passed counts in neither
 * @param toPay what the orders of the plan without it come to
 */
public record BudgetPrice(Difference without, Money toPay) implements SecondLook {
  /** Between the plan shown and the best found without the budget. */
  public static BudgetPrice between(Solved shown, Solved without) {
    Difference all = Difference.between(shown, without);
    Standing standing = shown.standing();
    Standing besides =
        new Standing(
            standing.unmetMust(),
            standing.unmetOther(),
            standing.shortfall() - beyond(shown.answer().plan().books()),
            standing.money());
    return new BudgetPrice(
        new Difference(
            new Difference.Side(besides, all.before().lateMeals()),
            all.after(),
            all.found(),
            all.saves()),
        without.answer().plan().books().total(Books.Account.CASH));
  }

  /** Percent by which orders and months pass their budget, summed. */
  public static long beyond(Books books) {
    return books.shortfalls().stream()
        .filter(shortfall -> shortfall.rule().equals("budget"))
        .mapToLong(Shortfall::amount)
        .sum();
  }
}
