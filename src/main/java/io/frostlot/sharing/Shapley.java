package io.frostlot.sharing;

import io.frostlot.plan.Range;
import java.util.ArrayList;
import java.util.List;

/**
 * The Shapley value: what a member adds to the cost, averaged over all orders in which the members
 * may join.
 *
 * <p>x(i) = sum over subgroups S without i of |S|! (n - |S| - 1)! / n! (c(S + i) - c(S)). Linear in
 * the costs, so that ranges of costs give exact ranges of shares. Source: L. S. Shapley, "A Value
 * for n-Person Games", Contributions to the Theory of Games 2, 1953.
 */
public final class Shapley {
  private Shapley() {}

  /** Shares in major units, by member, for the costs reckoned with. */
  public static double[] of(Game game) {
    return ranges(Game.of(game.members(), some -> Range.exactly(game.reckoned(some)))).stream()
        .mapToDouble(Range::least)
        .toArray();
  }

  /** Where each share lies when every cost lies anywhere in its range. */
  public static List<Range> ranges(Game game) {
    int count = game.members().size();
    double[] weights = weights(count);
    List<Range> shares = new ArrayList<>();
    for (int member = 0; member < count; member++) {
      double least = 0;
      double most = 0;
      for (Subgroup some : Subgroup.within(game.all())) {
        boolean joined = some.has(member);
        double weight = joined ? weights[some.size() - 1] : -weights[some.size()];
        Range part = game.cost(some).times(weight);
        least += part.least();
        most += part.most();
      }
      shares.add(new Range(Math.min(least, most), most));
    }
    return shares;
  }

  /** By the size of the subgroup that is joined; the whole group cannot be joined. */
  private static double[] weights(int count) {
    double[] weights = new double[count + 1];
    weights[0] = 1.0 / count;
    for (int size = 1; size < count; size++) {
      weights[size] = weights[size - 1] * size / (count - size);
    }
    return weights;
  }
}
