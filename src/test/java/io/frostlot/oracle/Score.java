package io.frostlot.oracle;

import io.frostlot.plan.Standing;

/** A standing that adds up, money in millionths. */
record Score(int must, int other, long shortfall, long money) implements Comparable<Score> {
  static final Score ZERO = new Score(0, 0, 0, 0);

  static Score money(long money) {
    return new Score(0, 0, 0, money);
  }

  Score plus(Score more) {
    return more.equals(ZERO)
        ? this
        : new Score(
            must + more.must, other + more.other, shortfall + more.shortfall, money + more.money);
  }

  Standing standing() {
    return new Standing(must, other, shortfall, Amounts.money(money));
  }

  @Override
  public int compareTo(Score o) {
    return must != o.must
        ? Integer.compare(must, o.must)
        : other != o.other
            ? Integer.compare(other, o.other)
            : shortfall != o.shortfall
                ? Long.compare(shortfall, o.shortfall)
                : Long.compare(money, o.money);
  }
}
