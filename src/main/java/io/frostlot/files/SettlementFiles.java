package io.frostlot.files;

import io.frostlot.plan.Settlement;
import io.frostlot.units.Money;
import java.util.List;

/**
 * A settled invoice as JSON, described by {@code settlement.schema.json}, and as CSV (RFC 4180),
 * one row per member, described by {@code settlement.table-schema.json}.
 */
public final class SettlementFiles {
  private static final List<String> HEADER =
      List.of(
          "member",
          "pieces",
          "goods",
          "losses",
          "shared",
          "credit",
          "pays",
          "as_ordered",
          "currency");
  private final Settlement settlement;
  private final String currency;
  private final int decimals;

  private SettlementFiles(Settlement settlement) {
    this.settlement = settlement;
    currency = settlement.group().first().currency().getCurrencyCode();
    decimals = Math.max(0, settlement.group().first().currency().getDefaultFractionDigits());
  }

  public static String json(Settlement settlement) {
    return JsonLines.document(new SettlementFiles(settlement)::write);
  }

  public static String csv(Settlement settlement) {
    SettlementFiles files = new SettlementFiles(settlement);
    StringBuilder text = new StringBuilder(OrderSheets.line(HEADER));
    settlement.now().sheets().forEach(sheet -> text.append(OrderSheets.line(files.row(sheet))));
    return text.toString();
  }

  private void write(JsonLines json) {
    json.text("group", settlement.group().name())
        .text("currency", currency)
        .text("supplier", settlement.invoice().head().supplier())
        .day("ordered", settlement.invoice().head().ordered())
        .text("host", settlement.invoice().head().host())
        .text("invoice", money(settlement.invoice().head().total()))
        .text("toPay", money(settlement.now().total()))
        .list("members", settlement.now().sheets(), this::sheet)
        .payments(settlement.now().payments(), this::money);
  }

  private void sheet(JsonLines json, Settlement.Sheet sheet) {
    json.text("name", sheet.member())
        .text("goods", money(sheet.pays().goods()))
        .text("losses", money(sheet.pays().losses()))
        .text("shared", money(sheet.pays().shared()))
        .text("hostCredit", money(sheet.pays().credit()))
        .text("pays", money(sheet.pays().total()))
        .text("more", money(settlement.more(sheet.member())))
        .list(
            "collects",
            sheet.portions(),
            (line, portion) ->
                line.text("item", portion.bag().pack().item().name())
                    .number("packCount", portion.bag().pack().pieces())
                    .number("bag", portion.bag().number())
                    .number("pieces", portion.pieces())
                    .number("wanted", portion.wanted()));
  }

  private List<String> row(Settlement.Sheet sheet) {
    int pieces = sheet.portions().stream().mapToInt(portion -> portion.pieces()).sum();
    return List.of(
        OrderSheets.harmless(sheet.member()),
        String.valueOf(pieces),
        money(sheet.pays().goods()),
        money(sheet.pays().losses()),
        money(sheet.pays().shared()),
        money(sheet.pays().credit()),
        money(sheet.pays().total()),
        money(settlement.before().sheet(sheet.member()).pays().total()),
        currency);
  }

  private String money(Money amount) {
    return amount.toText(decimals);
  }
}
