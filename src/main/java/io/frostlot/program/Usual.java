package io.frostlot.program;

import java.util.ArrayList;
import java.util.List;

/** Amounts of which the middle ones are what is expected next: some are far off. */
final class Usual {
  private final List<Double> amounts = new ArrayList<>();

  /** One that is infinite says nothing. */
  void add(double amount) {
    if (Double.isFinite(amount)) {
      amounts.add(amount);
    }
  }

  /** 0 where there is none yet; the lower of two in the middle. */
  double median() {
    return at(2);
  }

  /** A quarter of them are at most that. */
  double lowerQuartile() {
    return at(4);
  }

  private double at(int part) {
    return amounts.isEmpty()
        ? 0
        : amounts.stream().sorted().toList().get((amounts.size() - 1) / part);
  }
}
