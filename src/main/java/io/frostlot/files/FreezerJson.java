package io.frostlot.files;

import io.frostlot.plan.FreezerFinding;
import io.frostlot.plan.FreezerLoad;
import io.frostlot.plan.Inputs;
import io.frostlot.plan.Interval;
import io.frostlot.units.Litres;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Findings about freezers as JSON, described by {@code freezer.schema.json}. */
public final class FreezerJson {
  private final Inputs inputs;
  private final DifferenceJson differences;

  public FreezerJson(Inputs inputs) {
    this.inputs = inputs;
    differences = new DifferenceJson(inputs.world().decimals());
  }

  /** The document, ended by a line feed; of findings made twice the later one. */
  public String text(List<FreezerFinding> findings) {
    List<FreezerFinding> latest = latest(findings);
    return JsonLines.document(
        json -> {
          json.number("version", PlanJson.VERSION)
              .text("digest", inputs.digest())
              .text("currency", inputs.world().scenario().currency().getCurrencyCode());
          of(FreezerFinding.Use.class, latest).forEach(it -> use(json, it));
          json.list("losses", of(FreezerFinding.Loss.class, latest), this::loss);
          of(FreezerFinding.Curve.class, latest).forEach(it -> curve(json, it));
          of(FreezerFinding.Fit.class, latest).forEach(it -> fit(json, it));
          of(FreezerFinding.OneMore.class, latest).forEach(it -> oneMore(json, it));
          json.texts(
              "notKnown",
              of(FreezerFinding.NotKnown.class, latest).stream()
                  .map(it -> Typed.of(it.asked()))
                  .toList());
        });
  }

  /** From the last use of the freezers on, and what was found beside. */
  private static List<FreezerFinding> latest(List<FreezerFinding> findings) {
    List<FreezerFinding> latest = new ArrayList<>();
    for (FreezerFinding finding : findings) {
      if (finding instanceof FreezerFinding.Use) {
        latest.removeIf(
            it -> it instanceof FreezerFinding.Use || it instanceof FreezerFinding.Loss);
      }
      latest.add(finding);
    }
    return latest;
  }

  private static <T extends FreezerFinding> List<T> of(
      Class<T> type, List<FreezerFinding> findings) {
    return findings.stream().filter(type::isInstance).map(type::cast).toList();
  }

  private void use(JsonLines json, FreezerFinding.Use use) {
    differences.answer(json, "plan", use.plan());
    json.list("freezers", use.loads(), PlanJsonOutcome::freezer)
        .list(
            "free",
            use.free(),
            (one, day) ->
                one.day("day", day.day())
                    .number("litresThatDay", day.thatDay().toDecimal())
                    .number("litresToStay", day.lasting().toDecimal()));
  }

  private void loss(JsonLines json, FreezerFinding.Loss loss) {
    json.text("freezer", loss.freezer().name())
        .day("day", loss.day())
        .number("pieces", loss.pieces())
        .text("money", loss.money().toText(inputs.world().decimals()))
        .number("coldHours", loss.hours())
        .list(
            "contents",
            loss.contents(),
            (one, content) ->
                one.text("item", content.item().id())
                    .number("pieces", content.pieces())
                    .text("money", content.money().toText(inputs.world().decimals()))
                    .number("fitElsewhere", content.fitElsewhere())
                    .number("eatFirst", content.eatFirst()));
  }

  private void curve(JsonLines json, FreezerFinding.Curve curve) {
    json.object(
        "curve",
        one ->
            one.text("freezer", curve.freezer().name())
                .number("litresEnough", curve.enough().toDecimal())
                .yes("enoughProven", curve.isFlat())
                .list(
                    "points",
                    curve.points(),
                    (at, point) -> point(at, point, curve.bendsAt(curve.points().indexOf(point)))));
  }

  private void point(JsonLines json, FreezerFinding.Point point, boolean kink) {
    json.number("litres", point.litres().toDecimal()).yes("kink", kink);
    differences.answer(json, "plan", point.plan());
    differences.write(json, "difference", point.difference());
  }

  private void fit(JsonLines json, FreezerFinding.Fit fit) {
    json.object(
        "fit",
        one -> {
          differences.write(one, "anyRoom", fit.unlimited());
          one.number("thrownAway", fit.thrownAway());
        });
  }

  private void oneMore(JsonLines json, FreezerFinding.OneMore more) {
    json.object(
        "oneMore",
        one -> {
          one.number("litres", more.freezer().usable().toDecimal()).number("days", more.days());
          differences.write(one, "difference", more.difference());
          boolean told = more.difference().sameMeals();
          double years = more.payBackYears();
          DifferenceJson.bound(
              one,
              "netPerYear",
              told ? OptionalDouble.of(more.netPerYear()) : OptionalDouble.empty(),
              RoundingMode.HALF_UP);
          Interval atBest = told ? more.netAtBest() : Interval.UNKNOWN;
          DifferenceJson.bound(one, "netPerYearAtLeast", atBest.least(), RoundingMode.FLOOR);
          DifferenceJson.bound(one, "netPerYearAtMost", atBest.most(), RoundingMode.CEILING);
          if (told && Double.isFinite(years)) {
            one.number(
                "payBackYears",
                java.math.BigDecimal.valueOf(years).setScale(2, RoundingMode.HALF_UP));
          } else {
            one.nothing("payBackYears");
          }
        });
  }

  /** Room taken and free by freezer and day, as a table. */
  public static String csv(List<FreezerFinding> findings) {
    StringBuilder text =
        new StringBuilder(
            OrderSheets.line(List.of("freezer", "day", "litres_taken", "litres_free")));
    of(FreezerFinding.Use.class, latest(findings)).stream()
        .flatMap(use -> use.loads().stream())
        .forEach(load -> load.byDay().entrySet().forEach(day -> text.append(row(load, day))));
    return text.toString();
  }

  private static String row(FreezerLoad load, Map.Entry<LocalDate, Litres> day) {
    return OrderSheets.line(
        List.of(
            OrderSheets.harmless(load.freezer().name()),
            day.getKey().toString(),
            day.getValue().toDecimal().toPlainString(),
            load.free(day.getKey()).toDecimal().toPlainString()));
  }
}
