package io.frostlot.plan;

import io.frostlot.supply.Slot;
import io.frostlot.units.Money;
import java.time.YearMonth;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What invoices come to, as budgets look at it.
 *
 * @param orders by delivery
 * @param byMonth of the orders dated in each calendar month; in the month of the first planning
 *     day, which is always there, with what was spent before
 */
public record Spending(SortedMap<Slot, Money> orders, SortedMap<YearMonth, Money> byMonth) {
  /** Of a plan whose charges stand in the books. */
  public static Spending of(World world, Plan plan, Books books) {
    Spending spending = new Spending(new TreeMap<>(), new TreeMap<>());
    Policy.Budget budget = world.scenario().policy().ordering().budget();
    spending.byMonth.put(YearMonth.from(world.scenario().planning().from()), budget.spent());
    for (Order order : plan.orders()) {
      Money total = books.ledger(order.slot()).total();
      spending.orders.put(order.slot(), total);
      spending.byMonth.merge(YearMonth.from(order.slot().ordered()), total, Money::plus);
    }
    return spending;
  }
}
