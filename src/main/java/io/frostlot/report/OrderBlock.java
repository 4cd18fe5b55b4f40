package io.frostlot.report;

import io.frostlot.plan.Books;
import io.frostlot.plan.BoxFill;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.supply.Item;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** One order as it is to be placed, unpacked and paid. */
final class OrderBlock {
  private static final String INDENT = "    ";

  private OrderBlock() {}

  static void write(PlanReport report, Order order, Page page) {
    Supplier supplier = report.world().supplier(order.slot().supplier());
    page.gap();
    page.say(supplier.name() + (supplier.isPickUp() ? ", fetched" : ""));
    page.say(
        "order by "
            + Wording.day(order.slot().ordered())
            + (supplier.isPickUp() ? "; to be fetched on " : "; arrives ")
            + Wording.arrival(order.slot().arrivesEarliest(), order.slot().arrivesLatest()));
    lines(report, order, page);
    sums(report, order, supplier, page);
    boxes(order, supplier, page);
    freezers(report, order, page);
  }

  private static void lines(PlanReport report, Order order, Page page) {
    Table table = Table.of("", "", "", "");
    for (Order.Line line : order.lines()) {
      table.row(
          "  " + line.packs() + " x " + line.pack().item().name() + ", " + line.pack().pieces() + " a pack",
          grams(line.pack().item()),
          "list " + report.wording().bare(line.pack().price()),
          line.underSale().entrySet().stream()
              .map(sale -> sale.getValue() + " under \"" + sale.getKey() + "\"")
              .collect(Collectors.joining(", ")));
    }
    page.table(table);
  }

  private static String grams(Item item) {
    return Wording.decimal(item.grams().mean().toDouble())
        + " g"
        + (item.grams().guessed() ? " (guess)" : "");
  }

  private static void sums(PlanReport report, Order order, Supplier supplier, Page page) {
    Books.Ledger ledger = report.books().ledger(order.slot());
    Wording wording = report.wording();
    page.amount(INDENT, "goods", wording.bare(ledger.value(OrderTerms.Base.GOODS)));
    amountIfAny(page, wording, "discount" + discounts(order, supplier), ledger.discount().negated());
    for (OrderTerms.Charge charge : OrderTerms.Charge.values()) {
      String label = charge.name().toLowerCase(Locale.ROOT).replace('_', ' ');
      amountIfAny(page, wording, label, ledger.charge(charge));
    }
    amountIfAny(page, wording, "tax", ledger.tax());
    page.amount(INDENT, "to pay, " + wording.currency().getCurrencyCode(), wording.bare(ledger.total()));
  }

  private static void amountIfAny(Page page, Wording wording, String label, Money amount) {
    if (!amount.isZero()) {
      page.amount(INDENT, label, wording.bare(amount));
    }
  }

  private static String discounts(Order order, Supplier supplier) {
    return supplier.terms().discounts().stream()
        .map(OrderTerms.Discount::id)
        .filter(order.promotions()::contains)
        .map(id -> " \"" + id + "\"")
        .collect(Collectors.joining(","));
  }

  private static void boxes(Order order, Supplier supplier, Page page) {
    List<BoxFill> boxes = BoxFill.of(supplier.boxing(), order);
    for (int i = 0; i < boxes.size(); i++) {
      BoxFill box = boxes.get(i);
      String contents =
          box.contents().stream()
              .map(c -> c.packs() + " x " + c.pack().item().name() + " of " + c.pack().pieces())
              .collect(Collectors.joining(", "));
      page.hang(
          INDENT + "box " + (i + 1) + " of " + boxes.size() + ": ",
          (contents.isEmpty() ? "" : contents + "; ") + full(box.tightest()));
    }
  }

  private static String full(BoxFill.Fill fill) {
    String unit =
        switch (fill.unit()) {
          case KILOGRAMS -> " kg";
          case LITRES -> " l";
          case PIECES -> " pieces";
          case NONE -> "";
        };
    return unit.isEmpty()
        ? "no limit stated"
        : Wording.percent(fill.share())
            + " full, "
            + Wording.decimal(fill.used())
            + " of "
            + Wording.decimal(fill.limit())
            + unit;
  }

  private static void freezers(PlanReport report, Order order, Page page) {
    report.plan().lots().stream()
        .filter(lot -> lot.origin().equals(new Lot.Ordered(order.slot())))
        .collect(Collectors.groupingBy(Lot::freezer, java.util.TreeMap::new, Collectors.toList()))
        .forEach((freezer, lots) ->
            page.hang(
                INDENT + "into " + freezer + ": ",
                lots.stream().map(OrderBlock::stored).collect(Collectors.joining(", "))));
  }

  private static String stored(Lot lot) {
    return lot.pieces() + " " + lot.item().name() + " (use\u00a0by\u00a0" + Wording.day(lot.useBy()) + ")";
  }
}
