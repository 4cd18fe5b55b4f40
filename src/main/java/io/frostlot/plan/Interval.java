package io.frostlot.plan;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/**
 * Where a difference in money lies.
 *
 * @param least empty where nothing is known downwards
 * @param most empty where nothing is known upwards
 */
public record Interval(OptionalDouble least, OptionalDouble most) {
  public static final Interval UNKNOWN =
      new Interval(OptionalDouble.empty(), OptionalDouble.empty());

  public Interval {
    least = finite(least);
    most = finite(most);
  }

  public static Interval between(double least, double most) {
    return new Interval(OptionalDouble.of(least), OptionalDouble.of(most));
  }

  /** Between two plans in hand, where nothing better is looked for. */
  public static Interval exactly(Answer.Judged dearer, Answer.Judged cheaper) {
    double difference = cost(dearer) - cost(cheaper);
    return between(difference, difference);
  }

  /** What {@code after} saves against {@code before}, each between its bound and its cost. */
  public static Interval saving(Solved before, Solved after) {
    return new Interval(
        minus(before.answer().least(), OptionalDouble.of(after.cost())),
        minus(OptionalDouble.of(before.cost()), after.answer().least()));
  }

  /** What any plan of its world saves against the plan in hand. */
  public static Interval ofAnything(Solved inHand) {
    return new Interval(
        OptionalDouble.empty(), minus(OptionalDouble.of(inHand.cost()), inHand.answer().least()));
  }

  /** The same the other way round. */
  public Interval negated() {
    return new Interval(minus(OptionalDouble.of(0), most), minus(OptionalDouble.of(0), least));
  }

  /**
   * By how much some of what may be done costs more, at its best, than the plan shown, which was
   * looked for among all that may be done.
   *
   * @param part the best found in the part: its best lies between its cost and its bound, and not
   *     below the bound of the whole
   */
  public static Interval dearer(Answer.WithPlan part, Answer.WithPlan shown) {
    double cost = cost(shown.plan());
    double most = cost(part.plan()) - cost;
    OptionalDouble bound = Stream.of(part, shown).flatMapToDouble(it -> it.least().stream()).max();
    return bound.isPresent()
        ? between(Math.min(most, bound.getAsDouble() - cost), most)
        : new Interval(OptionalDouble.empty(), OptionalDouble.of(most));
  }

  /** So many times as much; not negative. */
  Interval times(double factor) {
    return new Interval(each(least, it -> it * factor), each(most, it -> it * factor));
  }

  Interval minus(double amount) {
    return new Interval(each(least, it -> it - amount), each(most, it -> it - amount));
  }

  private static OptionalDouble each(OptionalDouble end, DoubleUnaryOperator change) {
    return end.isPresent()
        ? OptionalDouble.of(change.applyAsDouble(end.getAsDouble()))
        : OptionalDouble.empty();
  }

  /** The same, where it is known besides that it is at least and at most so much. */
  Interval within(double atLeast, double atMost) {
    return between(Math.max(atLeast, least.orElse(atLeast)), Math.min(atMost, most.orElse(atMost)));
  }

  /** Is either end nearer than it was before, by more than so much money? */
  public boolean narrows(Interval before, double money) {
    return least.orElse(Double.NEGATIVE_INFINITY)
            > before.least.orElse(Double.NEGATIVE_INFINITY) + money
        || most.orElse(Double.POSITIVE_INFINITY)
            < before.most.orElse(Double.POSITIVE_INFINITY) - money;
  }

  /** Does zero lie inside, so that nothing can be told? */
  public boolean holdsZero() {
    return least.orElse(-1) <= 0 && most.orElse(1) >= 0;
  }

  /** A bound that is not known yet may be infinite. */
  private static OptionalDouble finite(OptionalDouble amount) {
    return amount.isPresent() && Double.isFinite(amount.getAsDouble())
        ? amount
        : OptionalDouble.empty();
  }

  private static OptionalDouble minus(OptionalDouble a, OptionalDouble b) {
    return a.isPresent() && b.isPresent()
        ? OptionalDouble.of(a.getAsDouble() - b.getAsDouble())
        : OptionalDouble.empty();
  }

  private static double cost(Answer.Judged judged) {
    return judged.standing().money().toDouble();
  }
}
