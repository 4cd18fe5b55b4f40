package io.frostlot.program;

import io.frostlot.plan.Policy;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** By how many whole percent orders pass a budget: {@link WithinBudget} in plain numbers. */
final class OverBudget {
  private final double perOrder;
  private final double perMonth;
  private final int[] monthOf;
  private final double[] spent;
  private long over;

  /**
   * Nothing is ordered.
   *
   * @param all deliveries, by number
   */
  OverBudget(World world, List<Deliveries.Delivery> all) {
    Policy.Budget budget = world.scenario().policy().ordering().budget();
    perOrder = limit(budget.perOrder());
    perMonth = limit(budget.perMonth());
    Map<YearMonth, Integer> months = new HashMap<>();
    months.put(YearMonth.from(world.scenario().planning().from()), 0);
    monthOf = new int[all.size()];
    for (int d = 0; d < monthOf.length; d++) {
      YearMonth month = YearMonth.from(all.get(d).slot().ordered());
      months.putIfAbsent(month, months.size());
      monthOf[d] = months.get(month);
    }
    spent = new double[months.size()];
    spent[0] = budget.spent().toDouble();
    over = percent(spent[0], perMonth);
  }

  /** Zero is no limit. */
  private static double limit(Money most) {
    return most.isZero() ? Double.POSITIVE_INFINITY : most.toDouble();
  }

  /** Whole percent, of all orders and months. */
  long over() {
    return over;
  }

  /** The invoice of a delivery comes to something else, 0 where there is none. */
  void change(int delivery, double before, double now) {
    int month = monthOf[delivery];
    over -= percent(before, perOrder) + percent(spent[month], perMonth);
    spent[month] += now - before;
    over += percent(now, perOrder) + percent(spent[month], perMonth);
  }

  private static long percent(double total, double limit) {
    return WholePercent.of(100 * (total / limit - 1));
  }
}
