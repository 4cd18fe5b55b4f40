package io.frostlot.files;

import io.frostlot.plan.HoldingCharge;
import io.frostlot.plan.MovesPolicy;
import io.frostlot.plan.Policy;

/** The field {@code policy} of scenario.json. */
final class PolicyPart {
  private PolicyPart() {}

  private static Policy.Budget budget(Json.Obj budget) {
    return new Policy.Budget(
        budget.money("perOrder"), budget.money("perMonth"), budget.money("spentThisMonth"));
  }

  private static MovesPolicy moves(Json.Obj moves) {
    return new MovesPolicy(moves.integer("everyDays"), moves.money("perPiece"));
  }

  private static Policy.Calm calm(Json.Obj calm) {
    return new Policy.Calm(calm.integer("days"), calm.money("charge"));
  }

  static Policy read(Json.Obj policy) {
    Json.Obj charges = policy.object("charges");
    Json.Obj safety = policy.object("safety");
    Json.Obj adequacy = policy.object("adequacy");
    return new Policy(
        policy.text("meals").equals("all") ? Policy.Demand.ALL : Policy.Demand.BEST_EFFORT,
        policy.text("endValue").equals("tail")
            ? new Policy.Tail(policy.integer("tailDays"))
            : Policy.Tail.NONE,
        policy.text("freezerCheck").equals("end-of-day")
            ? Policy.FreezerCheck.END_OF_DAY
            : Policy.FreezerCheck.AFTER_DELIVERY,
        new Policy.Charges(
            new HoldingCharge(
                charges.money("holdingPerPieceNight"), charges.money("holdingPerLitreNight")),
            charges.money("perOrder"),
            charges.money("perDeliveryDay"),
            charges.money("lateMealPerDay"),
            charges.money("perPiecePastBest")),
        new Policy.Safety(
            safety.integer("daysOfCover"),
            safety.percent("marginPercent"),
            new Policy.SecondFreezer(safety.integer("secondFreezerDays"))),
        new Policy.Adequacy(
            adequacy.yes("asked"),
            adequacy.percent("leastPercent"),
            adequacy.percent("mostPercent")),
        new Policy.Ordering(budget(policy.object("budget")), calm(policy.object("calm"))),
        moves(policy.object("moves")));
  }
}
