package io.frostlot.files;

import io.frostlot.plan.Invoice;
import io.frostlot.plan.Shared;
import io.frostlot.units.Money;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

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
    for (Invoice invoice : shared.invoices()) {
      String name = invoice.head().supplier() + "-" + invoice.head().ordered();
      files.put(
          free(name, files.keySet()), JsonLines.document(json -> writer.write(json, invoice)));
    }
    return files;
  }

  /** Parts of a group that order apart may order from the same supplier on the same day. */
  private static String free(String name, Set<String> taken) {
    return IntStream.iterate(1, n -> n + 1)
        .mapToObj(n -> name + (n == 1 ? "" : "-" + n) + ".json")
        .filter(file -> !taken.contains(file))
        .findFirst()
        .orElseThrow();
  }

  private void write(JsonLines json, Invoice invoice) {
    Invoice.Head head = invoice.head();
    Money list =
        invoice.lines().stream()
            .map(line -> line.packPrice().times(line.packs()))
            .reduce(Money.ZERO, Money::plus);
    json.text("note", "Expected; correct it to what the invoice says.")
        .text("supplier", head.supplier())
        .day("ordered", head.ordered())
        .text("host", head.host())
        .list("lines", invoice.lines(), this::line)
        .list(
            "charges",
            List.of(head.total().minus(list)),
            (line, rest) ->
                line.text("label", "charges and tax, less breaks, sales and discounts")
                    .text("amount", money(rest)))
        .text("total", money(head.total()))
        .list("portions", invoice.portions(), InvoiceJson::portion);
    amounts(json, "agreed", "shared", invoice.agreed());
    amounts(json, "evened", "more", invoice.evened());
  }

  /** In the group's order; nothing where none is said. */
  private void amounts(JsonLines json, String list, String field, Map<String, Money> amounts) {
    List<String> names = shared.group().names().stream().filter(amounts::containsKey).toList();
    if (!names.isEmpty()) {
      json.list(
          list,
          names,
          (line, name) -> line.text("member", name).text(field, money(amounts.get(name))));
    }
  }

  private void line(JsonLines json, Invoice.Line line) {
    json.text("item", line.pack().item().name())
        .number("packCount", line.pack().pieces())
        .number("packs", line.packs())
        .text("packPrice", money(line.packPrice()));
  }

  private static void portion(JsonLines json, Invoice.Portion some) {
    json.text("member", some.member())
        .text("item", some.bag().pack().item().name())
        .number("packCount", some.bag().pack().pieces())
        .number("bag", some.bag().number())
        .number("pieces", some.pieces())
        .number("wanted", some.wanted());
  }

  private String money(Money amount) {
    return amount.toText(decimals);
  }
}
