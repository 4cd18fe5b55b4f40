package io.frostlot.plan;

import java.util.OptionalDouble;

/**
 * Where a saving lies with both answers at their best, each between its bound and its cost.
 *
 * @param least empty where nothing is known downwards
 * @param most empty where nothing is known upwards
 */
public record Saving(OptionalDouble least, OptionalDouble most) {
  /** What {@code after} saves against {@code before}. */
  public static Saving of(Solved before, Solved after) {
    return new Saving(
        minus(before.answer().bound(), OptionalDouble.of(after.cost())),
        minus(OptionalDouble.of(before.cost()), after.answer().bound()));
  }

  private static OptionalDouble minus(OptionalDouble a, OptionalDouble b) {
    return a.isPresent() && b.isPresent()
        ? OptionalDouble.of(a.getAsDouble() - b.getAsDouble())
        : OptionalDouble.empty();
  }

  /** The same, where it is known besides that it is at least and at most so much. */
  Saving within(double atLeast, double atMost) {
    return new Saving(
        OptionalDouble.of(Math.max(atLeast, least.orElse(atLeast))),
        OptionalDouble.of(Math.min(atMost, most.orElse(atMost))));
  }

  /** Does zero lie inside, so that nothing can be told? */
  public boolean holdsZero() {
    return least.orElse(-1) <= 0 && most.orElse(1) >= 0;
  }
}
