package io.frostlot.program;

/**
 * What a {@link Trial} comes to, as far as it knows.
 *
 * @param unmet meals, a must-meal counts {@value #MUST} times
 * @param shortfall in the units of the soft rules, not rounded
 * @param money cash, reckoned and tail
 */
record Amounts(double unmet, double shortfall, double money) implements Comparable<Amounts> {
  static final double MUST = 100;
  static final Amounts NOTHING = new Amounts(0, 0, 0);

  /** Sums that were changed often are not exact. */
  private static final double EXACT = 1e-6;

  Amounts plusUnmet(double more) {
    return new Amounts(unmet + more, shortfall, money);
  }

  Amounts plusShortfall(double more) {
    return new Amounts(unmet, shortfall + more, money);
  }

  Amounts plusMoney(double more) {
    return new Amounts(unmet, shortfall, money + more);
  }

  /** Level by level; amounts of shortfall that a plan would round to the same are the same. */
  @Override
  public int compareTo(Amounts other) {
    if (Math.abs(unmet - other.unmet) > EXACT) {
      return Double.compare(unmet, other.unmet);
    }
    double own = Math.ceil(shortfall - EXACT);
    double others = Math.ceil(other.shortfall - EXACT);
    if (own != others) {
      return Double.compare(own, others);
    }
    return Math.abs(money - other.money) > EXACT ? Double.compare(money, other.money) : 0;
  }
}
