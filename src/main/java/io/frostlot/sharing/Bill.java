package io.frostlot.sharing;

import io.frostlot.units.Money;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What is to be shared, and what sharing may look at.
 *
 * @param game what subgroups would pay by themselves; what is to be shared is its whole cost
 * @param burdens by member
 */
public record Bill(Game game, List<Burden> burdens) {
  public Bill {
    burdens = List.copyOf(burdens);
    if (burdens.size() != game.members().size()) {
      throw new IllegalArgumentException(burdens.size() + " burdens");
    }
  }

  public int members() {
    return burdens.size();
  }

  /** What no member has for itself: shipping, packing, discounts; may be negative. */
  public double common() {
    return game.toShare() - burdens.stream().map(Burden::own).mapToDouble(Money::toDouble).sum();
  }

  /** What is each member's own, plus its part of an amount; equal parts where all weigh nothing. */
  public double[] ownAndPart(double amount, ToDoubleFunction<Burden> weight) {
    double[] parts = parts(amount, weight);
    for (int i = 0; i < parts.length; i++) {
      parts[i] += burdens.get(i).own().toDouble();
    }
    return parts;
  }

  /** An amount in proportion to a weight; in equal parts where all weigh nothing. */
  public double[] parts(double amount, ToDoubleFunction<Burden> weight) {
    double[] weights = burdens.stream().mapToDouble(weight).toArray();
    double sum = 0;
    for (double each : weights) {
      sum += each;
    }
    double[] parts = new double[weights.length];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = sum > 0 ? amount * weights[i] / sum : amount / parts.length;
    }
    return parts;
  }
}
