package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Supplier;
import java.util.Optional;

/**
 * The levels of the comparison as one number, for searching only: each level weighs so much that it
 * is seldom traded for the next. Answers are always compared level by level.
 *
 * @param scale about what one order costs
 */
record Weights(double scale) {
  static Weights of(World world) {
    double scale = Math.max(1, world.dueSoon().charge().toDouble());
    for (Supplier supplier : world.scenario().suppliers()) {
      Shipping.Rate rate = supplier.shipping().rate();
      double box = rate.perOrder().plus(rate.firstBox()).toDouble();
      double pack =
          supplier.sheet().packs().stream()
              .map(Pack::price)
              .mapToDouble(price -> price.toDouble())
              .max()
              .orElse(0);
      scale = Math.max(scale, box + pack);
    }
    return new Weights(scale);
  }

  /** What an unmet meal weighs that is no must. */
  double ofAMeal() {
    return of(Level.UNMET_OTHER);
  }

  private double of(Level level) {
    return switch (level) {
      case UNMET_MUST -> 100 * scale;
      case UNMET_OTHER -> 20 * scale;
      case SHORTFALL -> 2 * scale;
      case MONEY -> 1;
    };
  }

  Linear objective(Model model) {
    Linear sum = new Linear();
    for (Level level : Level.values()) {
      sum.plus(of(level), model.objective(level));
    }
    return sum;
  }

  double of(Standing standing) {
    return beforeMoney(standing.unmetMust(), standing.unmetOther(), standing.shortfall())
        + standing.money().toDouble();
  }

  /** Of the plan, if there is one; else infinite. */
  double of(Optional<Answer.Judged> plan) {
    return plan.map(it -> of(it.standing())).orElse(Double.POSITIVE_INFINITY);
  }

  /** What weighs more than money. */
  double beforeMoney(int unmetMust, int unmetOther, long shortfall) {
    return of(Level.UNMET_MUST) * unmetMust
        + of(Level.UNMET_OTHER) * unmetOther
        + of(Level.SHORTFALL) * shortfall;
  }
}
