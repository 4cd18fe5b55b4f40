package io.frostlot.files;

import io.frostlot.plan.Shared;
import java.util.List;

/**
 * What each member of a group collects, as CSV (RFC 4180), one row per bag or portion; described by
 * {@code share-sheet.table-schema.json}.
 */
public final class ShareTable {
  private static final List<String> HEADER =
      List.of(
          "member",
          "supplier",
          "order_by",
          "collect",
          "item",
          "pieces",
          "wanted",
          "bag",
          "pack_count",
          "grams",
          "goods",
          "currency");

  private ShareTable() {}

  /** Nothing is collected. */
  public static String empty() {
    return OrderSheets.line(HEADER);
  }

  public static String of(Shared shared) {
    StringBuilder text = new StringBuilder(empty());
    String currency = shared.group().first().currency().getCurrencyCode();
    int decimals = Math.max(0, shared.group().first().currency().getDefaultFractionDigits());
    for (Shared.Sheet sheet : shared.sheets()) {
      for (Shared.Collected some : sheet.collected()) {
        text.append(
            OrderSheets.line(
                List.of(
                    OrderSheets.harmless(sheet.keeper()),
                    OrderSheets.harmless(some.order().slot().supplier()),
                    some.order().slot().ordered().toString(),
                    some.day().toString(),
                    OrderSheets.harmless(some.portion().pack().item().name()),
                    String.valueOf(some.portion().pieces()),
                    String.valueOf(some.wanted()),
                    String.valueOf(some.portion().bag()),
                    String.valueOf(some.portion().pack().pieces()),
                    some.grams().toDecimal().toPlainString(),
                    some.goods().rounded(decimals).toText(decimals),
                    currency)));
      }
    }
    return text.toString();
  }
}
