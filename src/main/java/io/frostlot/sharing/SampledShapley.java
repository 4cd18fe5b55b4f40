package io.frostlot.sharing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The Shapley value from a sample of the orders in which members may join, each taken forwards and
 * backwards; the shares of every order add up to the cost of all, so their means do too.
 *
 * <p>Source: J. Castro, D. Gomez, J. Tejada, "Polynomial calculation of the Shapley value based on
 * sampling", Computers &amp; Operations Research 36, 2009 (from memory).
 *
 * @param shares means, in major units, by member
 * @param standardErrors of the means
 */
public record SampledShapley(double[] shares, double[] standardErrors) {

  /**
   * Samples pairs of orders.
   *
   * @param members at most {@link Subgroup#MOST_MEMBERS}
   * @param pairs at least 2
   * @param cost asked for the same subgroup often
   */
  public static SampledShapley of(
      int members, ToDoubleFunction<Subgroup> cost, int pairs, Random random) {
    if (pairs < 2) {
      throw new IllegalArgumentException("a sample of " + pairs);
    }
    double[] mean = new double[members];
    double[] squares = new double[members];
    List<Integer> order = new ArrayList<>(IntStream.range(0, members).boxed().toList());
    for (int pair = 1; pair <= pairs; pair++) {
      Collections.shuffle(order, random);
      double[] sample = new double[members];
      join(order, cost, sample);
      Collections.reverse(order);
      join(order, cost, sample);
      for (int i = 0; i < members; i++) {
        double from = sample[i] / 2 - mean[i];
        mean[i] += from / pair;
        squares[i] += from * (sample[i] / 2 - mean[i]);
      }
    }
    double[] errors =
        Arrays.stream(squares).map(sum -> Math.sqrt(sum / (pairs - 1) / pairs)).toArray();
    return new SampledShapley(mean, errors);
  }

  private static void join(List<Integer> order, ToDoubleFunction<Subgroup> cost, double[] added) {
    Subgroup some = Subgroup.NOBODY;
    double before = 0;
    for (int member : order) {
      some = some.with(member);
      double after = cost.applyAsDouble(some);
      added[member] += after - before;
      before = after;
    }
  }
}
