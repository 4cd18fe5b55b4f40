package io.frostlot.keeping;

import io.frostlot.units.Grams;

/** The expected body mass of one animal, days after the scenario's first day. */
public sealed interface Curve {
  /**
   * Expected mass.
   *
   * @param days days after the day on which the start mass was taken, not negative
   */
  Grams massAfter(long days);

  /** The same growth from another start mass; what grows is then at least as heavy as an adult. */
  Curve from(Grams start);

  /** An adult that keeps its mass. */
  record Constant(Grams mass) implements Curve {
    @Override
    public Curve from(Grams start) {
      return new Constant(start);
    }

    @Override
    public Grams massAfter(long days) {
      return mass;
    }
  }

  /**
   * Logistic growth through the start mass: m(t) = A / (1 + (A / m0 - 1) exp(-k t)); m0 start mass
   * in g, A adult mass in g, k per day.
   */
  record Logistic(Grams start, Grams adult, double ratePerDay) implements Curve {
    public Logistic {
      requireGrowth(start, adult, ratePerDay);
    }

    @Override
    public Curve from(Grams other) {
      return new Logistic(other, other.compareTo(adult) > 0 ? other : adult, ratePerDay);
    }

    @Override
    public Grams massAfter(long days) {
      double ratio = adult.toDouble() / start.toDouble() - 1;
      return Grams.of(adult.toDouble() / (1 + ratio * Math.exp(-ratePerDay * days)));
    }
  }

  /**
   * Gompertz growth through the start mass: m(t) = A exp(ln(m0 / A) exp(-k t)); symbols as for
   * {@link Logistic}.
   */
  record Gompertz(Grams start, Grams adult, double ratePerDay) implements Curve {
    public Gompertz {
      requireGrowth(start, adult, ratePerDay);
    }

    @Override
    public Curve from(Grams other) {
      return new Gompertz(other, other.compareTo(adult) > 0 ? other : adult, ratePerDay);
    }

    @Override
    public Grams massAfter(long days) {
      double log = Math.log(start.toDouble() / adult.toDouble());
      return Grams.of(adult.toDouble() * Math.exp(log * Math.exp(-ratePerDay * days)));
    }
  }

  private static void requireGrowth(Grams start, Grams adult, double ratePerDay) {
    if (start.milligrams() == 0 || adult.compareTo(start) < 0 || !(ratePerDay > 0)) {
      throw new IllegalArgumentException(
          "growth needs 0 < start mass <= adult mass and a rate above 0: "
              + start
              + ", "
              + adult
              + ", "
              + ratePerDay);
    }
  }
}
