package io.frostlot.bench;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Gap;

/**
 * What the seconds are counted to; gaps are proven by the method itself, in percent of the bill.
 */
public enum Goal {
  FIRST_PLAN("first plan"),
  ONE_PERCENT("1 %"),
  HALF_PERCENT("0.5 %"),
  HALF_BOX("half a box charge"),
  PROOF("proof");

  private final String says;

  Goal(String says) {
    this.says = says;
  }

  String says() {
    return says;
  }

  /** Has an answer come so far? */
  boolean isReached(Answer.WithPlan answer) {
    return answer instanceof Answer.Proven
        || switch (this) {
          case FIRST_PLAN -> true;
          case ONE_PERCENT -> Gap.of(answer).filter(gap -> gap.percent() <= 1).isPresent();
          case HALF_PERCENT -> Gap.of(answer).filter(gap -> gap.percent() <= 0.5).isPresent();
          case HALF_BOX ->
              Gap.of(answer)
                  .filter(gap -> gap.boxCharges().orElse(Double.POSITIVE_INFINITY) <= 0.5)
                  .isPresent();
          case PROOF -> false;
        };
  }
}
