package io.frostlot.files;

import io.frostlot.forecast.Meal;
import io.frostlot.keeping.Importance;
import io.frostlot.plan.Contents;
import io.frostlot.plan.FreezerLoad;
import io.frostlot.plan.Leftover;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Shortfall;
import java.math.RoundingMode;
import java.util.List;

/**
 * {@code unmetMeals[]}, {@code lateMeals}, {@code gaveWay[]}, {@code leftovers[]} and {@code
 * freezers[]} of a plan in JSON.
 */
final class PlanJsonOutcome {
  private static final int PART_DECIMALS = 3;

  private PlanJsonOutcome() {}

  /**
   * All but {@code gaveWay[]}.
   *
   * @param decimals of money
   */
  static void write(JsonLines json, Outcome outcome, int decimals) {
    json.list("unmetMeals", outcome.missed(), PlanJsonOutcome::missed)
        .number("lateMeals", outcome.lateMeals())
        .list("leftovers", outcome.leftovers(), PlanJsonOutcome::leftover)
        .list(
            "freezers",
            outcome.freezers(),
            (one, load) -> {
              freezer(one, load);
              outcome.dearest().stream()
                  .filter(contents -> contents.freezer().equals(load.freezer()))
                  .forEach(contents -> atRisk(one, contents, decimals));
            });
  }

  private static void atRisk(JsonLines json, Contents contents, int decimals) {
    json.object(
        "atRisk",
        one ->
            one.day("day", contents.day())
                .number("pieces", contents.count())
                .text("money", contents.worth().toText(decimals)));
  }

  /** {@code gaveWay[]}: by how much rules that give way fall short, and where. */
  static void write(JsonLines json, List<Shortfall> shortfalls) {
    json.list(
        "gaveWay",
        shortfalls,
        (one, shortfall) ->
            one.text("rule", shortfall.rule())
                .text("unit", Typed.of(shortfall.unit()))
                .number("amount", shortfall.amount())
                .list("parts", shortfall.parts(), PlanJsonOutcome::part));
  }

  private static void part(JsonLines json, Shortfall.Part part) {
    json.text("of", part.of())
        .day("from", part.days().from())
        .day("to", part.days().to())
        .number("amount", part.amount().setScale(PART_DECIMALS, RoundingMode.HALF_EVEN));
  }

  private static void missed(JsonLines json, Outcome.Missed missed) {
    Meal meal = missed.demand().meal();
    json.text("animal", meal.eater())
        .day("day", meal.days().best())
        .day("earliest", meal.days().earliest())
        .day("latest", meal.days().latest())
        .number("meals", missed.count())
        .yes("must", meal.importance() == Importance.MUST)
        .number("gramsFrom", meal.prey().window().least().toDecimal())
        .number("gramsTo", meal.prey().window().most().toDecimal());
    if (missed.nearestItem().isEmpty()) {
      json.nothing("nearestItem");
    } else {
      json.text("nearestItem", missed.nearestItem());
    }
  }

  private static void leftover(JsonLines json, Leftover leftover) {
    json.text("lot", leftover.lot().id())
        .text("item", leftover.lot().item().id())
        .number("pieces", leftover.pieces())
        .text("freezer", leftover.lot().freezer())
        .day("useBy", leftover.lot().useBy())
        .text("reason", leftover.reason().id());
  }

  static void freezer(JsonLines json, FreezerLoad load) {
    json.text("name", load.freezer().name())
        .number("litres", load.freezer().usable().toDecimal())
        .number("peakLitres", load.peak().toDecimal())
        .day("peakDay", load.peakDay())
        .list(
            "limits",
            load.freezer().access().limits(),
            (one, limit) ->
                one.day("from", limit.days().from())
                    .day("to", limit.days().to())
                    .number("litres", limit.litres().toDecimal()))
        .list(
            "byDay",
            load.byDay().entrySet(),
            (one, day) ->
                one.day("day", day.getKey()).number("litres", day.getValue().toDecimal()));
  }
}
