package io.frostlot.files;

import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.util.Map;

/** {@code lots[]}, {@code feedings[]} and {@code discards[]} of a plan in JSON. */
final class PlanJsonPrey {
  static final String IN_HAND = "in-hand";
  static final String UNDER_WAY = "under-way";
  static final String ORDERED = "ordered";

  private PlanJsonPrey() {}

  static void write(JsonLines json, Plan plan, World world) {
    Map<String, Demand> demands = world.demandsById();
    json.list("lots", plan.lots(), (one, lot) -> lot(one, lot, world))
        .list(
            "feedings",
            plan.feedings(),
            (one, feeding) -> feeding(one, feeding, demands.get(feeding.mealId()).meal().eater()))
        .list(
            "discards",
            plan.discards(),
            (one, discard) ->
                one.text("lot", discard.lotId())
                    .day("day", discard.day())
                    .number("pieces", discard.pieces()));
  }

  private static void lot(JsonLines json, Lot lot, World world) {
    json.text("id", lot.id())
        .text("item", lot.item().id())
        .number("pieces", lot.pieces())
        .text("freezer", lot.freezer())
        .day("arrivesEarliest", lot.earliest())
        .day("arrivesLatest", lot.latest())
        .day("useBy", lot.useBy())
        .day("bestBefore", world.bestBefore(lot))
        .object("origin", one -> origin(one, lot.origin()));
    if (lot.isMoved()) {
      json.object("moved", one -> one.text("from", lot.move().from()).day("day", lot.move().day()));
    }
  }

  private static void origin(JsonLines json, Lot.Origin origin) {
    if (origin instanceof Lot.InHand inHand) {
      json.text("from", IN_HAND).text("lot", inHand.stockLot());
    } else if (origin instanceof Lot.UnderWay underWay) {
      json.text("from", UNDER_WAY).text("lot", underWay.placedLot());
    } else {
      Lot.Ordered ordered = (Lot.Ordered) origin;
      json.text("from", ORDERED)
          .text("supplier", ordered.slot().supplier())
          .day("orderBy", ordered.slot().ordered());
    }
  }

  private static void feeding(JsonLines json, Feeding feeding, String eater) {
    json.text("meal", feeding.mealId())
        .text("animal", eater)
        .day("day", feeding.day())
        .text("item", feeding.option().item().id())
        .number("pieces", feeding.option().pieces())
        .number("meals", feeding.meals())
        .list(
            "draws",
            feeding.draws(),
            (one, draw) -> one.text("lot", draw.lotId()).number("pieces", draw.pieces()));
  }
}
