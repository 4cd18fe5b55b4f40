package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.OrderTerms;
import io.frostlot.units.Money;
import java.util.List;

/** What a part of an order would have come to by itself, by the same rules of prices and boxes. */
public final class Repricing {
  private Repricing() {}

  /**
   * A price.
   *
   * @param goods after breaks and sales
   * @param total to pay, charges and tax with it
   */
  public record Priced(int boxes, Money goods, Money total) {}

  /**
   * Prices some lines of an order, in as few boxes as they need, with the promotions that it takes.
   *
   * @param lines at least one
   */
  public static Priced of(World world, Order order, List<Order.Line> lines) {
    Order.Boxes boxes = PlanBuilder.boxes(world.supplier(order.slot().supplier()), lines);
    Order part = new Order(order.slot(), lines, order.promotions(), boxes);
    Plan plan = new Plan(List.of(part), List.of(), List.of(), List.of());
    Books books = Rules.judge(world, plan).books();
    Books.Ledger ledger = books.ledger(order.slot());
    return new Priced(boxes.count(), ledger.value(OrderTerms.Subtotal.GOODS), ledger.total());
  }
}
