package io.frostlot.plan;

import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Where a difference in money lies.
 *
 * @param least empty where nothing is known downwards
 * @param most that of two plans in hand
 */
public record Interval(OptionalDouble least, double most) {
  public static Interval between(double least, double most) {
    return new Interval(OptionalDouble.of(least), most);
  }

  /** Between two plans in hand, where nothing better is looked for. */
  public static Interval exactly(Answer.Judged dearer, Answer.Judged cheaper) {
    double difference = cost(dearer) - cost(cheaper);
    return between(difference, difference);
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
    OptionalDouble bound = Stream.of(part, shown).flatMapToDouble(it -> it.bound().stream()).max();
    return bound.isPresent()
        ? between(Math.min(most, bound.getAsDouble() - cost), most)
        : new Interval(OptionalDouble.empty(), most);
  }

  private static double cost(Answer.Judged judged) {
    return judged.standing().money().toDouble();
  }
}
