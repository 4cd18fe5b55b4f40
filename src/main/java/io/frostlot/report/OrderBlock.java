package io.frostlot.report;

import io.frostlot.plan.Books;
import io.frostlot.plan.BoxFill;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.supply.Item;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.util.List;
import java.util.stream.Collectors;

/** One order as it is to be placed, unpacked and paid. */
final class OrderBlock {
  private OrderBlock() {}

  static void write(PlanReport report, Order order, Page page) {
    Supplier supplier = report.world().supplier(order.slot().supplier());
    page.entry(supplier.name());
    page.say(
        supplier.isPickUp()
            ? "fetch " + when(supplier, order.slot())
            : "order %s; arrives %s"
                .formatted(
                    when(supplier, order.slot()),
                    Wording.arrival(order.slot().arrivesEarliest(), order.slot().arrivesLatest())));
    lines(report, order, page);
    sums(report, order, supplier, page);
    boxes(order, supplier, page);
    freezers(report, order, page);
  }

  /** Such as "by Tue 7 Jan 2031", or "on Tue 7 Jan 2031" where that is the day of the trip. */
  static String when(Supplier supplier, Slot slot) {
    if (!supplier.isPickUp()) {
      return "by " + Wording.day(slot.ordered());
    }
    String on = "on " + Wording.day(slot.ships());
    return slot.ordered().equals(slot.ships())
        ? on
        : on + ", ordered by " + Wording.day(slot.ordered());
  }

  private static void lines(PlanReport report, Order order, Page page) {
    Table table = Table.of("", "", "", "");
    for (Order.Line line : order.lines()) {
      table.row(
          "  %s x %s, pack of %s"
              .formatted(line.packs(), line.pack().item().name(), line.pack().pieces()),
          grams(line.pack().item()),
          "list price " + report.wording().bare(line.pack().price()),
          line.underSale().entrySet().stream()
              .map(sale -> "%s under \"%s\"".formatted(sale.getValue(), sale.getKey()))
              .collect(Collectors.joining(", ")));
    }
    page.table(table);
  }

  private static String grams(Item item) {
    return Wording.decimal(item.grams().mean().toDouble())
        + Wording.NO_BREAK
        + "g"
        + (item.grams().guessed() ? " (guess)" : "");
  }

  private static void sums(PlanReport report, Order order, Supplier supplier, Page page) {
    Books.Ledger ledger = report.books().ledger(order.slot());
    Wording wording = report.wording();
    page.amount("goods", wording.bare(ledger.value(OrderTerms.Subtotal.GOODS)));
    amountIfAny(
        page, wording, "discount" + discounts(order, supplier), ledger.discount().negated());
    for (OrderTerms.Charge charge : OrderTerms.Charge.values()) {
      amountIfAny(page, wording, label(charge, supplier), ledger.charge(charge));
    }
    amountIfAny(page, wording, "tax", ledger.tax());
    page.total("to pay, " + wording.currency().getCurrencyCode(), wording.bare(ledger.total()));
  }

  private static String label(OrderTerms.Charge charge, Supplier supplier) {
    return switch (charge) {
      case SHIPPING -> "shipping";
      case PACKING -> "packing";
      case SURCHARGE -> "seasonal surcharge";
      case ORDER_CHARGE -> supplier.isPickUp() ? "trip" : "order charge";
    };
  }

  private static void amountIfAny(Page page, Wording wording, String label, Money amount) {
    if (!amount.isZero()) {
      page.amount(label, wording.bare(amount));
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
          box.contents().stream().map(OrderBlock::content).collect(Collectors.joining(", "));
      page.detail(
          "box %s of %s".formatted(i + 1, boxes.size()),
          (contents.isEmpty() ? "" : contents + "; ") + full(box.tightest()));
    }
  }

  private static String content(Order.Content content) {
    Pack pack = content.pack();
    return "%s x %s of %s".formatted(content.packs(), pack.item().name(), pack.pieces());
  }

  /** In short; empty where no limit is stated. */
  static String unit(BoxFill.Unit unit) {
    return switch (unit) {
      case KILOGRAMS -> "kg";
      case LITRES -> "l";
      case PIECES -> "pieces";
      case NONE -> "";
    };
  }

  private static String full(BoxFill.Fill fill) {
    return fill.unit() == BoxFill.Unit.NONE
        ? "no limit stated"
        : "%s full, %s of %s %s"
            .formatted(
                Wording.percent(fill.share()),
                Wording.decimal(fill.used()),
                Wording.decimal(fill.limit()),
                unit(fill.unit()));
  }

  private static void freezers(PlanReport report, Order order, Page page) {
    List<Lot> lots =
        report.plan().lots().stream()
            .filter(lot -> lot.origin().equals(new Lot.Ordered(order.slot())))
            .toList();
    Places.of(report.world(), lots)
        .forEach(
            (place, some) ->
                page.detail(
                    "into " + place,
                    some.stream()
                        .map(lot -> lot.pieces() + " " + lot.item().name())
                        .collect(Collectors.joining(", "))));
  }
}
