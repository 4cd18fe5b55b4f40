package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.Spending;
import io.frostlot.plan.World;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * An order, and the orders dated in one calendar month, should cost no more than their budget.
 *
 * <p>For each order o with budget B, and each month m with budget B likewise, total being what its
 * invoices come to (in the first month with what was spent before): over &gt;= 100 / B x (total -
 * B), in percent, rounded up to a {@linkplain WholePercent whole percent}. The sum of over gives
 * way before a meal does and comes before money: one percent of a budget weighs as much as one
 * piece of a margin or one percent of a programme, so that a budget twice as large is missed by
 * half as much, in whatever currency.
 *
 * <p>Where days are taken together an order stands for several, so nothing is asked of it then.
 */
final class WithinBudget implements Rule {
  private static final int DIGITS = 12;
  private final World world;
  private final Policy.Budget budget;

  WithinBudget(World world) {
    this.world = world;
    budget = world.scenario().policy().ordering().budget();
  }

  @Override
  public String id() {
    return "budget";
  }

  @Override
  public String says() {
    String order = budget.perOrder().isZero() ? "any amount" : "at most " + budget.perOrder();
    String month = budget.perMonth().isZero() ? "any amount" : "at most " + budget.perMonth();
    return "An order should cost " + order + ", the orders of a month " + month + ".";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  private YearMonth firstMonth() {
    return YearMonth.from(world.scenario().planning().from());
  }

  @Override
  public void impose(Program program) {
    if (program.decisions().timeline().grain().takesDaysTogether()) {
      return;
    }
    Map<YearMonth, Linear> byMonth = new TreeMap<>();
    byMonth.put(firstMonth(), Linear.constant(budget.spent().toDouble()));
    for (OrderDecisions order : program.decisions().orders().values()) {
      Linear total = order.sums().total();
      over(total, budget.perOrder(), program.model());
      byMonth
          .computeIfAbsent(YearMonth.from(order.slot().ordered()), month -> new Linear())
          .plus(total);
    }
    byMonth.values().forEach(total -> over(total, budget.perMonth(), program.model()));
  }

  private void over(Linear total, Money limit, Model model) {
    if (limit.isZero() || model.most(total) <= limit.toDouble()) {
      return;
    }
    WholePercent.impose(id(), new Linear().plus(100 / limit.toDouble(), total).plus(-100), model);
  }

  @Override
  public void judge(Plan plan, Books books) {
    Spending spending = Spending.of(world, plan, books);
    List<Shortfall.Part> parts = new ArrayList<>();
    spending
        .orders()
        .forEach(
            (slot, total) -> {
              Period day = new Period(slot.ordered(), slot.ordered());
              add(slot.supplier(), day, over(total, budget.perOrder()), parts);
            });
    spending
        .byMonth()
        .forEach(
            (month, total) -> {
              Period days = new Period(month.atDay(1), month.atEndOfMonth());
              add("", days, over(total, budget.perMonth()), parts);
            });
    books.shortfall(Shortfall.counted(id(), Shortfall.Unit.PERCENT, parts));
  }

  private static void add(String of, Period days, long over, List<Shortfall.Part> parts) {
    if (over > 0) {
      parts.add(new Shortfall.Part(of, days, over));
    }
  }

  /** Whole percent by which a limit is passed. */
  private static long over(Money total, Money limit) {
    if (limit.isZero() || limit.atLeast(total)) {
      return 0;
    }
    BigDecimal beyond = total.minus(limit).amount().movePointRight(2);
    return WholePercent.of(beyond.divide(limit.amount(), DIGITS, RoundingMode.HALF_EVEN));
  }
}
