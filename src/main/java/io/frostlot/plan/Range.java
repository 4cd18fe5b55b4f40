package io.frostlot.plan;

/**
 * An amount of money that is known to lie between two others, in major units.
 *
 * @param least at most {@code most}
 */
public record Range(double least, double most) {
  public Range {
    if (!(least <= most)) {
      throw new IllegalArgumentException("range from " + least + " to " + most);
    }
  }

  public static Range exactly(double amount) {
    return new Range(amount, amount);
  }

  public double width() {
    return most - least;
  }

  public double middle() {
    return (least + most) / 2;
  }

  public Range plus(Range other) {
    return new Range(least + other.least, most + other.most);
  }

  /** Every amount times a factor, which may be negative. */
  public Range times(double factor) {
    double a = least * factor;
    double b = most * factor;
    return new Range(Math.min(a, b), Math.max(a, b));
  }

  /** Where the smaller of two amounts lies. */
  public Range orLess(Range other) {
    return new Range(Math.min(least, other.least), Math.min(most, other.most));
  }
}
