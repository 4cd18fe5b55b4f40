package io.frostlot.files;

import io.frostlot.plan.Books;
import io.frostlot.plan.BoxFill;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.OrderTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.TreeSet;

/** {@code orders[]} of a plan in JSON. */
record PlanJsonOrders(World world, Books books) {
  private static final int FILL_DECIMALS = 6;

  void write(JsonLines json, Plan plan) {
    json.list("orders", plan.orders(), this::order);
  }

  private void order(JsonLines json, Order order) {
    json.text("supplier", order.slot().supplier())
        .day("orderBy", order.slot().ordered())
        .day("ships", order.slot().ships())
        .day("arrivesEarliest", order.slot().arrivesEarliest())
        .day("arrivesLatest", order.slot().arrivesLatest())
        .list("packs", order.lines(), this::line)
        .texts("promotions", new TreeSet<>(order.promotions()))
        .list(
            "boxes",
            BoxFill.of(world.supplier(order.slot().supplier()).boxing(), order),
            PlanJsonOrders::box);
    int decimals = world.decimals();
    Books.Ledger ledger = books.ledger(order.slot());
    json.text("goods", ledger.value(OrderTerms.Subtotal.GOODS).toText(decimals))
        .text("discount", ledger.discount().toText(decimals))
        .text("shipping", ledger.allCharges().toText(decimals))
        .text("tax", ledger.tax().toText(decimals))
        .text("total", ledger.total().toText(decimals));
  }

  private void line(JsonLines json, Order.Line line) {
    json.text("item", line.pack().item().name())
        .number("packCount", line.pack().pieces())
        .number("packs", line.packs())
        .text("price", line.pack().price().toText(world.decimals()))
        .list(
            "underSales",
            line.underSale().entrySet(),
            (one, sale) -> one.text("sale", sale.getKey()).number("packs", sale.getValue()));
  }

  private static void box(JsonLines json, BoxFill box) {
    contents(json, "contents", box.contents());
    json.text("unit", Typed.of(box.tightest().unit()))
        .number("used", decimal(box.tightest().used()))
        .number("limit", decimal(box.tightest().limit()));
  }

  static void contents(JsonLines json, String name, List<Order.Content> contents) {
    json.list(
        name,
        contents,
        (one, content) ->
            one.text("item", content.pack().item().name())
                .number("packCount", content.pack().pieces())
                .number("packs", content.packs()));
  }

  static BigDecimal decimal(double value) {
    return BigDecimal.valueOf(value)
        .setScale(FILL_DECIMALS, RoundingMode.HALF_UP)
        .stripTrailingZeros();
  }
}
