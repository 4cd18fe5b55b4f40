package io.frostlot.files;

import io.frostlot.plan.BillLines;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.PlanComparison;
import io.frostlot.plan.SupplierFinding;
import io.frostlot.units.Money;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.OptionalDouble;

/** Two plans, or suppliers, compared as JSON, described by {@code compare.schema.json}. */
public final class CompareJson {
  private CompareJson() {}

  /** Two plans: the document, ended by a line feed. */
  public static String text(PlanComparison comparison, Currency currency) {
    int decimals = Math.max(0, currency.getDefaultFractionDigits());
    return JsonLines.document(
        json -> {
          json.number("version", PlanJson.VERSION)
              .text("currency", currency.getCurrencyCode())
              .texts("names", comparison.names());
          json.object("standings", one -> standings(one, comparison));
          new PlanJsonChanges(decimals).write(json, comparison.changes());
          json.list(
              "lines",
              comparison.lines(),
              (one, line) ->
                  one.text("kind", kind(line))
                      .text("rule", line.rule())
                      .text("before", line.before().toText(decimals))
                      .text("after", line.after().toText(decimals))
                      .text("difference", line.difference().toText(decimals)));
        });
  }

  private static void standings(JsonLines json, PlanComparison comparison) {
    DifferenceJson.side(json, "before", comparison.before());
    DifferenceJson.side(json, "after", comparison.after());
    json.yes("sameMeals", comparison.moneyCompares());
  }

  private static String kind(BillLines.Line line) {
    return Typed.of(line.account());
  }

  /** The lines as a table, the last one their sum. */
  public static String csv(PlanComparison comparison) {
    StringBuilder text =
        new StringBuilder(
            OrderSheets.line(List.of("kind", "rule", "before", "after", "difference")));
    Money sum = Money.ZERO;
    for (BillLines.Line line : comparison.lines()) {
      sum = sum.plus(line.difference());
      text.append(
          OrderSheets.line(
              List.of(
                  kind(line),
                  OrderSheets.harmless(line.rule()),
                  line.before().toString(),
                  line.after().toString(),
                  line.difference().toString())));
    }
    return text.append(OrderSheets.line(List.of("", "all", "", "", sum.toString()))).toString();
  }

  /** Suppliers: the document, ended by a line feed. */
  public static String text(Inputs inputs, List<SupplierFinding> findings) {
    DifferenceJson differences = new DifferenceJson(inputs.world().decimals());
    List<SupplierFinding> latest = latest(findings);
    return JsonLines.document(
        json -> {
          json.number("version", PlanJson.VERSION)
              .text("digest", inputs.digest())
              .text("currency", inputs.world().scenario().currency().getCurrencyCode());
          of(SupplierFinding.All.class, latest)
              .forEach(it -> differences.answer(json, "plan", it.plan()));
          json.list(
              "suppliers",
              of(SupplierFinding.Part.class, latest),
              (one, part) -> {
                one.text("supplier", part.supplier()).text("way", Typed.of(part.way()));
                part.difference().forEach(it -> differences.write(one, "difference", it));
              });
          json.list(
              "prices",
              of(SupplierFinding.Sheets.class, latest).stream()
                  .flatMap(it -> it.prices().stream())
                  .toList(),
              CompareJson::price);
        });
  }

  private static void price(JsonLines json, SupplierFinding.Price price) {
    json.text("supplier", price.supplier())
        .text("item", price.pack().item().id())
        .number("packCount", price.pack().pieces())
        .number("grams", price.pack().item().grams().mean().toDecimal());
    amount(json, "per100g", OptionalDouble.of(price.per100g()));
    amount(json, "landedPer100g", price.landed());
    amount(json, "perMeal", price.perMeal());
    amount(json, "per100kcal", price.per100kcal());
  }

  private static void amount(JsonLines json, String name, OptionalDouble amount) {
    DifferenceJson.bound(json, name, amount, RoundingMode.HALF_UP);
  }

  /** What was told last; parts again where the whole was. */
  private static List<SupplierFinding> latest(List<SupplierFinding> findings) {
    List<SupplierFinding> latest = new ArrayList<>();
    for (SupplierFinding finding : findings) {
      if (finding instanceof SupplierFinding.All) {
        latest.removeIf(it -> !(it instanceof SupplierFinding.Sheets));
      }
      latest.add(finding);
    }
    return latest;
  }

  private static <T extends SupplierFinding> List<T> of(
      Class<T> type, List<SupplierFinding> findings) {
    return findings.stream().filter(type::isInstance).map(type::cast).toList();
  }

  /** The price sheets as a table. */
  public static String csv(List<SupplierFinding> findings) {
    StringBuilder text =
        new StringBuilder(
            OrderSheets.line(
                List.of(
                    "supplier",
                    "item",
                    "grams",
                    "per_100g",
                    "landed_per_100g",
                    "per_meal",
                    "per_100kcal")));
    of(SupplierFinding.Sheets.class, findings).stream()
        .flatMap(it -> it.prices().stream())
        .forEach(price -> text.append(row(price)));
    return text.toString();
  }

  private static String row(SupplierFinding.Price price) {
    return OrderSheets.line(
        List.of(
            OrderSheets.harmless(price.supplier()),
            OrderSheets.harmless(price.pack().item().name()),
            price.pack().item().grams().mean().toDecimal().toPlainString(),
            DifferenceJson.decimal(price.per100g(), RoundingMode.HALF_UP),
            DifferenceJson.cell(price.landed(), RoundingMode.HALF_UP),
            DifferenceJson.cell(price.perMeal(), RoundingMode.HALF_UP),
            DifferenceJson.cell(price.per100kcal(), RoundingMode.HALF_UP)));
  }
}
