package io.frostlot.program;

/**
 * What a {@link Trial} comes to, as one number in money: what it costs, and what falls short, is
 * unmet or cannot be, each a multiple of what lies below it.
 *
 * @param ofShortfall money that a unit of shortfall weighs as much as
 */
record Weighing(double ofShortfall) {
  /** Units of shortfall that weigh as much as an unmet meal; a must-meal more. */
  static final double OF_A_MEAL = 100;

  /** The same of a litre for which there is no room, and of a pack that is pledged and lacks. */
  private static final double OF_A_LITRE = 1e6;

  private static final double MICRO = 1e-6;

  /**
   * With what cannot be.
   *
   * @param tooMuch microlitres for which there is no room
   * @param offPledged packs too few and too many for what is pledged
   */
  double of(Amounts all, long tooMuch, int offPledged) {
    double noRoom = tooMuch == 0 ? 0 : OF_A_LITRE * (1 + tooMuch * MICRO);
    noRoom += OF_A_LITRE * offPledged;
    return all.money() + ofShortfall * (all.shortfall() + OF_A_MEAL * all.unmet() + noRoom);
  }
}
