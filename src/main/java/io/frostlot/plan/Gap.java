package io.frostlot.plan;

import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much money a plan may lie above the best possible.
 *
 * @param amount not negative
 * @param percent of cash and reckoned money, without the tail; 0 where there is none of it
 * @param boxCharges in box charges, one being the shipping of the plan / its boxes; empty where no
 *     box is paid for
 */
public record Gap(double amount, double percent, OptionalDouble boxCharges) {

  /** Empty where no bound is known. */
  public static Optional<Gap> of(Answer.WithPlan answer) {
    return answer.bound().stream().mapToObj(bound -> of(answer.plan(), bound)).findFirst();
  }

  /** Above the best of the plans that are as good before money; empty where no bound is known. */
  public static Optional<Gap> amongAsGood(Answer.WithPlan answer) {
    return answer.boundOfAsGood().stream().mapToObj(bound -> of(answer.plan(), bound)).findFirst();
  }

  private static Gap of(Answer.Judged judged, double bound) {
    double amount = Math.max(0, judged.standing().money().toDouble() - bound);
    double spent = judged.books().withoutTail().toDouble();
    double box = boxCharge(judged).map(Money::toDouble).orElse(0.0);
    return new Gap(
        amount,
        spent > 0 ? 100 * amount / spent : 0,
        box > 0 ? OptionalDouble.of(amount / box) : OptionalDouble.empty());
  }

  /** The shipping of a plan over its boxes; empty where no box is paid for. */
  public static Optional<Money> boxCharge(Answer.Judged judged) {
    List<Order> boxed =
        judged.plan().orders().stream().filter(order -> order.boxes().count() > 0).toList();
    int boxes = boxed.stream().mapToInt(order -> order.boxes().count()).sum();
    return boxed.stream()
        .map(order -> judged.books().ledger(order.slot()).allCharges())
        .reduce(Money::plus)
        .map(
            all ->
                new Money(all.amount().divide(BigDecimal.valueOf(boxes), 4, RoundingMode.HALF_UP)));
  }
}
