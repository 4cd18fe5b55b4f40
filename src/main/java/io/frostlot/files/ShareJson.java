package io.frostlot.files;

import io.frostlot.plan.Books;
import io.frostlot.plan.Group;
import io.frostlot.plan.NothingShared;
import io.frostlot.plan.Order;
import io.frostlot.plan.Range;
import io.frostlot.plan.Shared;
import io.frostlot.units.Money;
import java.util.List;
import java.util.Locale;

/**
 * A shared plan, or that there is none, as JSON, described by {@code share.schema.json}; money as
 * decimals in quotes.
 */
public final class ShareJson {
  private final Shared shared;
  private final List<String> warnings;
  private final int decimals;

  private ShareJson(Shared shared, List<String> warnings) {
    this.shared = shared;
    this.warnings = List.copyOf(warnings);
    decimals = Math.max(0, shared.group().first().currency().getDefaultFractionDigits());
  }

  /**
   * One document.
   *
   * @param warnings sentences on what was accepted but should be looked at
   */
  public static String text(Shared shared, List<String> warnings) {
    return JsonLines.document(new ShareJson(shared, warnings)::write);
  }

  /** Where nothing is shared: who has no plan of its own, and what clashes there. */
  public static String text(NothingShared nothing, List<String> warnings) {
    return JsonLines.document(
        json -> {
          begin(json, nothing.group(), nothing.isImpossible() ? "impossible" : "none");
          json.text("without", String.join("", nothing.without().member()))
              .texts("clash", nothing.clash());
          List.of("parts", "members", "ways", "payments", "tipped", "contentment")
              .forEach(name -> json.texts(name, List.of()));
          json.texts("warnings", warnings);
        });
  }

  private static void begin(JsonLines json, Group group, String status) {
    json.text("group", group.name())
        .text("status", status)
        .text("currency", group.first().currency().getCurrencyCode())
        .text("way", group.terms().way());
  }

  private void write(JsonLines json) {
    begin(json, shared.group(), "shared");
    json.text("without", "")
        .texts("clash", List.of())
        .list("parts", shared.parts(), this::part)
        .list("members", shared.sheets(), this::member)
        .list("ways", shared.ways(), this::way)
        .payments(shared.payments(), this::money)
        .list("tipped", shared.findings().tipped(), this::tipped)
        .list(
            "contentment",
            shared.findings().contentment(),
            (line, found) ->
                line.list(
                        "betterApart",
                        found.better(),
                        (some, names) -> some.texts("members", names))
                    .list(
                        "notSettled",
                        found.unsettled(),
                        (some, names) -> some.texts("members", names))
                    .text("leastPain", amount(found.pain())))
        .texts("warnings", warnings);
  }

  private void part(JsonLines json, Shared.Part part) {
    json.texts("members", part.keepers())
        .text("host", part.host())
        .list("orders", part.plan().orders(), (line, order) -> order(line, part, order));
  }

  private void order(JsonLines json, Shared.Part part, Order order) {
    Books.Ledger ledger = part.answer().plan().books().ledger(order.slot());
    json.text("supplier", order.slot().supplier())
        .yes("joint", part.isJoint(order))
        .text("buyer", part.buyer(order))
        .texts("for", part.takers(order))
        .day("orderBy", order.slot().ordered())
        .day("arrivesEarliest", order.slot().arrivesEarliest())
        .day("arrivesLatest", order.slot().arrivesLatest())
        .number("boxes", order.boxes().count())
        .text("total", money(ledger.total()))
        .list(
            "packs",
            order.lines(),
            (line, packs) ->
                line.text("item", packs.pack().item().name())
                    .number("packCount", packs.pack().pieces())
                    .number("packs", packs.packs()));
  }

  private void member(JsonLines json, Shared.Sheet sheet) {
    Shared.Pays pays = sheet.account().pays();
    Shared.Meals meals = shared.partOf(sheet.keeper()).meals(sheet.keeper());
    json.text("name", sheet.keeper())
        .number("meals", meals.all())
        .number("mealsMet", meals.met())
        .text("goods", money(pays.goods()))
        .text("shared", money(pays.shared()))
        .text("ownOrders", money(pays.own()))
        .text("hostCredit", money(pays.credit()))
        .text("pays", money(pays.total()))
        .text("later", money(sheet.account().later()))
        .text("alone", money(sheet.account().alone()))
        .text("aloneAtLeast", sheet.account().aloneAtLeast().map(this::money).orElse(""))
        .text("saving", money(sheet.account().saving()))
        .text("savingAtLeast", sheet.account().sureSaving().map(this::money).orElse(""))
        .list(
            "collects",
            sheet.collected(),
            (line, some) ->
                line.text("supplier", some.order().slot().supplier())
                    .day("orderBy", some.order().slot().ordered())
                    .day("day", some.day())
                    .text("item", some.portion().pack().item().name())
                    .number("pieces", some.portion().pieces())
                    .number("wanted", some.wanted())
                    .number("grams", some.grams().toDecimal())
                    .number("bag", some.portion().bag())
                    .number("packCount", some.portion().pack().pieces())
                    .text("goods", money(some.goods().rounded(decimals))));
  }

  private void way(JsonLines json, Shared.WayRow way) {
    json.text("way", way.way())
        .texts("pays", way.pays().stream().map(this::money).toList())
        .list("ranges", way.known().ranges(), this::range)
        .texts(
            "standardErrors",
            way.known().standardErrors().stream().map(ShareJson::amount).toList());
  }

  private void range(JsonLines json, Range range) {
    json.text("least", amount(range.least())).text("most", amount(range.most()));
  }

  private void tipped(JsonLines json, Shared.Tipped tipped) {
    json.text("supplier", tipped.order().slot().supplier())
        .day("orderBy", tipped.order().slot().ordered())
        .text("item", tipped.lines().get(0).pack().item().name())
        .number("grams", tipped.grams().toDecimal())
        .number("boxesLess", tipped.boxesLess())
        .text("less", money(tipped.less()));
  }

  private String money(Money amount) {
    return amount.toText(decimals);
  }

  /** Not exact; empty where nothing is known. */
  private static String amount(double amount) {
    return Double.isFinite(amount) ? String.format(Locale.ROOT, "%.4f", amount) : "";
  }
}
