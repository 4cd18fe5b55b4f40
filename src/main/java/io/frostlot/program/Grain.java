package io.frostlot.program;

import io.frostlot.plan.World;

/**
 * How finely a {@link Timeline} looks at time; all but {@link #DAYS} are relaxations.
 *
 * @param step days that are taken for one
 * @param slack days by which a use-by may be put off, so that fewer days need be looked at
 * @param tailSlack the same after the planning days
 * @param nightsTogether a meal spares all nights from the first day of its segment on, so that
 *     meals of unlike days may be one class; on plans only the charge for holding is the less
 */
record Grain(int step, int slack, int tailSlack, boolean nightsTogether) {
  /** With more kinds of meals the nights that each of them spares are not told apart. */
  private static final int MANY_KINDS = 3000;

  /** The world as it is. */
  static final Grain DAYS = new Grain(1, 0, 0, false);

  /** Deliveries on their days; a use-by is put off by up to a week, in the tail by a month. */
  static final Grain DELIVERIES = new Grain(1, 7, 32, false);

  /** So many days are taken for one. */
  static Grain ofStep(int step) {
    return new Grain(step, 0, 0, false);
  }

  /** The same with nights taken together where the program would be large. */
  Grain fit(World world) {
    return isLarge(world) ? withNightsTogether() : this;
  }

  static boolean isLarge(World world) {
    return world.meals().alike().size() > MANY_KINDS;
  }

  Grain withNightsTogether() {
    return new Grain(step, slack, tailSlack, true);
  }

  boolean takesDaysTogether() {
    return step > 1;
  }

  /** Are all days looked at on which anything can change? */
  boolean isExact() {
    return step == 1 && slack == 0 && tailSlack == 0;
  }
}
