package io.frostlot.program;

/**
 * How finely a {@link Timeline} looks at time; all but {@link #DAYS} are relaxations.
 *
 * @param step days that are taken for one
 * @param slack days by which a use-by may be put off, so that fewer days need be looked at
 * @param tailSlack the same after the planning days
 */
record Grain(int step, int slack, int tailSlack) {
  /** The world as it is. */
  static final Grain DAYS = new Grain(1, 0, 0);

  /** Deliveries on their days; a use-by is put off by up to a week, in the tail by a month. */
  static final Grain DELIVERIES = new Grain(1, 7, 32);

  /** So many days are taken for one. */
  static Grain ofStep(int step) {
    return new Grain(step, 0, 0);
  }

  boolean isExact() {
    return equals(DAYS);
  }
}
