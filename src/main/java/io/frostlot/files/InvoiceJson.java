package io.frostlot.files;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Shared;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What the invoice of each joint order of a shared plan is expected to say, as files that {@link
 * InvoiceFile} reads: to be corrected by hand once the invoice has come.
 */
public final class InvoiceJson {
  private final Shared shared;
  private final int decimals;

  private InvoiceJson(Shared shared) {
    this.shared = shared;
    decimals = Math.max(0, shared.group().first().currency().getDefaultFractionDigits());
  }

  /** Documents by file name. */
  public static Map<String, String> all(Shared shared) {
    Map<String, String> files = new LinkedHashMap<>();
    InvoiceJson writer = new InvoiceJson(shared);
    for (Shared.Part part : shared.parts()) {
      for (Order order : part.plan().orders()) {
        if (part.isJoint(order)) {
          String name = order.slot().supplier() + "-" + order.slot().ordered() + ".json";
          files.put(name, JsonLines.document(json -> writer.write(json, part, order)));
        }
      }
    }
    return files;
  }

  private void write(JsonLines json, Shared.Part part, Order order) {
    Books.Ledger ledger = part.answer().plan().books().ledger(order.slot());
    Money total = ledger.total().rounded(decimals);
    Money list =
        order.lines().stream()
            .map(line -> line.pack().price().times(line.packs()))
            .reduce(Money.ZERO, Money::plus);
    json.text("note", "Expected; correct it to what the invoice says.")
        .text("supplier", order.slot().supplier())
        .day("ordered", order.slot().ordered())
        .text("host", part.host())
        .list("lines", order.lines(), this::line)
        .list(
            "charges",
            List.of(total.minus(list)),
            (line, rest) ->
                line.text("label", "charges and tax, less breaks, sales and discounts")
                    .text("amount", money(rest)))
        .text("total", money(total))
        .list("portions", portions(order).toList(), InvoiceJson::portion);
    if (shared.group().terms().needsPlan()) {
      BigDecimal fraction = fraction(part, order);
      json.list(
          "agreed",
          shared.sheets().stream().filter(s -> part.keepers().contains(s.keeper())).toList(),
          (line, sheet) ->
              line.text("member", sheet.keeper())
                  .text(
                      "shared", money(sheet.account().pays().shared().times(fraction, decimals))));
    }
  }

  private Stream<Shared.Collected> portions(Order order) {
    return shared.sheets().stream()
        .flatMap(sheet -> sheet.collected().stream())
        .filter(some -> some.order().equals(order));
  }

  /** The order's part of what joint orders cost beyond their goods. */
  private BigDecimal fraction(Shared.Part part, Order order) {
    List<Order> joint = part.plan().orders().stream().filter(part::isJoint).toList();
    BigDecimal all =
        joint.stream()
            .map(it -> common(part, it).amount())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return all.signum() == 0
        ? BigDecimal.ONE.divide(BigDecimal.valueOf(joint.size()), 10, RoundingMode.HALF_UP)
        : common(part, order).amount().divide(all, 10, RoundingMode.HALF_UP);
  }

  private Money common(Shared.Part part, Order order) {
    Money goods = portions(order).map(Shared.Collected::goods).reduce(Money.ZERO, Money::plus);
    return part.answer().plan().books().ledger(order.slot()).total().minus(goods);
  }

  private void line(JsonLines json, Order.Line line) {
    json.text("item", line.pack().item().name())
        .number("packCount", line.pack().pieces())
        .number("packs", line.packs())
        .text("packPrice", money(line.pack().price()));
  }

  private static void portion(JsonLines json, Shared.Collected some) {
    json.text("member", some.portion().keeper())
        .text("item", some.portion().pack().item().name())
        .number("packCount", some.portion().pack().pieces())
        .number("bag", some.portion().bag())
        .number("pieces", some.portion().pieces())
        .number("wanted", some.wanted());
  }

  private String money(Money amount) {
    return amount.toText(decimals);
  }
}
