package io.frostlot.files;

import io.frostlot.plan.Deal;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Excess;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.SaleFinding;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Findings about deals as JSON, described by {@code sale.schema.json}. */
public final class SaleJson {
  private final Inputs inputs;
  private final List<Deal> deals;
  private final DifferenceJson differences;

  public SaleJson(Inputs inputs, List<Deal> deals) {
    this.inputs = inputs;
    this.deals = List.copyOf(deals);
    differences = new DifferenceJson(inputs.world().decimals());
  }

  /** The document, ended by a line feed; of findings made twice the later one. */
  public String text(List<SaleFinding> findings) {
    return JsonLines.document(
        json -> {
          json.number("version", PlanJson.VERSION)
              .text("digest", inputs.digest())
              .text("currency", inputs.world().scenario().currency().getCurrencyCode())
              .list("deals", deals, SaleJson::deal);
          of(SaleFinding.Worth.class, findings).forEach(it -> worth(json, it));
          json.list("curves", all(SaleFinding.Curve.class, findings), this::curve);
          json.list(
              "apart",
              of(SaleFinding.Apart.class, findings).stream()
                  .flatMap(it -> it.alone().stream())
                  .toList(),
              (one, alone) -> {
                deal(one, alone.deal());
                differences.write(one, "difference", alone.difference());
              });
          of(SaleFinding.WorseCase.class, findings).forEach(it -> worse(json, it));
          of(SaleFinding.Waiting.class, findings).forEach(it -> waiting(json, it));
          of(SaleFinding.NothingToWaitFor.class, findings).forEach(it -> nothing(json, it));
          json.texts(
              "notKnown",
              all(SaleFinding.NotKnown.class, findings).stream()
                  .map(it -> Typed.of(it.asked()))
                  .toList());
        });
  }

  private static <T extends SaleFinding> List<T> all(Class<T> type, List<SaleFinding> findings) {
    return findings.stream().filter(type::isInstance).map(type::cast).toList();
  }

  /** The last, where there is one. */
  private static <T extends SaleFinding> List<T> of(Class<T> type, List<SaleFinding> findings) {
    List<T> all = all(type, findings);
    return all.subList(Math.max(0, all.size() - 1), all.size());
  }

  private static void deal(JsonLines json, Deal deal) {
    json.text("supplier", deal.supplier())
        .text("id", deal.id())
        .text("when", deal.when().from() + "/" + deal.when().to());
  }

  private void worth(JsonLines json, SaleFinding.Worth worth) {
    differences.answer(json, "without", worth.without());
    differences.answer(json, "with", worth.with());
    differences.write(json, "worth", worth.difference());
    json.list(
        "packs",
        worth.packs(),
        (one, packs) ->
            one.text("item", packs.pack().item().id())
                .number("packCount", packs.pack().pieces())
                .number("with", packs.with())
                .number("without", packs.without()));
    new PlanJsonChanges(inputs.world().decimals()).write(json, worth.changes());
  }

  private void curve(JsonLines json, SaleFinding.Curve curve) {
    deal(json, curve.deal());
    json.number("turn", curve.turn())
        .yes("turnProven", curve.sure())
        .list(
            "points",
            curve.points(),
            (one, point) -> {
              one.number("packs", point.packs()).yes("atLeast", point.atLeast());
              point.difference().forEach(it -> differences.write(one, "difference", it));
            })
        .list("reasons", curve.reasons(), this::reason);
  }

  private void reason(JsonLines json, Excess reason) {
    json.text("reason", Typed.of(reason.kind()))
        .text("what", reason.what())
        .day("day", reason.day())
        .text("amount", reason.amount().toText(inputs.world().decimals()));
  }

  private void worse(JsonLines json, SaleFinding.WorseCase worse) {
    json.object(
        "worseCase",
        one -> {
          one.number("skippedPercent", worse.skipped().value()).number("packs", worse.packs());
          differences.write(one, "knownBefore", worse.best());
          worse.asTaken().forEach(it -> differences.write(one, "packsAsPlanned", it));
        });
  }

  private void waiting(JsonLines json, SaleFinding.Waiting waiting) {
    json.object(
        "waiting",
        one -> {
          one.number("chancePercent", waiting.chance().value()).day("until", waiting.until());
          differences.write(one, "ifItComes", waiting.ifItComes());
          differences.write(one, "ifItDoesNot", waiting.ifItDoesNot());
          if (waiting.moneyDecides()) {
            one.text(
                "gainsOnAverage", DifferenceJson.decimal(waiting.expected(), RoundingMode.HALF_UP));
          } else {
            one.nothing("gainsOnAverage");
          }
          waiting.latestSafe().forEach(day -> one.day("latestSafe", day));
        });
  }

  private static void nothing(JsonLines json, SaleFinding.NothingToWaitFor nothing) {
    json.object(
        "nothingToWaitFor",
        one -> one.day("until", nothing.until()).yes("atOnce", nothing.atOnce()));
  }

  /** The points of the curves as a table. */
  public static String csv(List<SaleFinding> findings) {
    StringBuilder text =
        new StringBuilder(
            OrderSheets.line(
                List.of("deal", "packs", "at_least", "saves", "saves_at_least", "saves_at_most")));
    for (SaleFinding.Curve curve : all(SaleFinding.Curve.class, findings)) {
      for (SaleFinding.Point point : curve.points()) {
        List<String> cells = new ArrayList<>();
        cells.add(OrderSheets.harmless(curve.deal().id()));
        cells.add(String.valueOf(point.packs()));
        cells.add(point.atLeast() ? "yes" : "no");
        cells.addAll(saving(point));
        text.append(OrderSheets.line(cells));
      }
    }
    return text.toString();
  }

  /** Empty where meals differ, or no plan was found. */
  private static List<String> saving(SaleFinding.Point point) {
    return point.difference().stream()
        .filter(Difference::sameMeals)
        .map(
            it ->
                List.of(
                    it.found().toString(),
                    DifferenceJson.cell(it.saves().least(), RoundingMode.FLOOR),
                    DifferenceJson.cell(it.saves().most(), RoundingMode.CEILING)))
        .findFirst()
        .orElse(List.of("", "", ""));
  }
}
