package io.frostlot.plan;

import java.util.OptionalDouble;

/**
 * Where a difference in money lies.
 *
 * @param least empty where nothing is known downwards
 * @param most empty where nothing is known upwards
 */
public record Interval(OptionalDouble least, OptionalDouble most) {
  public static Interval between(double least, double most) {
    return new Interval(OptionalDouble.of(least), OptionalDouble.of(most));
  }

  /**
   * By how much another answer costs more than the one shown, both at their best: each best lies
   * between its bound and its cost.
   */
  public static Interval dearer(Answer.WithPlan other, Answer.WithPlan shown) {
    return new Interval(
        minus(other.bound(), OptionalDouble.of(cost(shown))),
        minus(OptionalDouble.of(cost(other)), shown.bound()));
  }

  private static double cost(Answer.WithPlan answer) {
    return answer.plan().standing().money().toDouble();
  }

  private static OptionalDouble minus(OptionalDouble a, OptionalDouble b) {
    return a.isPresent() && b.isPresent()
        ? OptionalDouble.of(a.getAsDouble() - b.getAsDouble())
        : OptionalDouble.empty();
  }

  /** The same difference seen from the other side. */
  public Interval turned() {
    return new Interval(negated(most), negated(least));
  }

  private static OptionalDouble negated(OptionalDouble amount) {
    return amount.isPresent() ? OptionalDouble.of(-amount.getAsDouble()) : amount;
  }

  /** Does zero lie inside, so that nothing can be told? */
  public boolean holdsZero() {
    return least.orElse(-1) <= 0 && most.orElse(1) >= 0;
  }
}
