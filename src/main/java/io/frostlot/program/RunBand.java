package io.frostlot.program;

import io.frostlot.plan.MealRun;

/**
 * A {@link MealRun} in plain numbers, for searching.
 *
 * @param programme grams; likewise the least and the most where all its meals are met
 */
record RunBand(double programme, double least, double most) {
  static RunBand of(MealRun run) {
    MealRun.Band band = run.band();
    return new RunBand(run.target().toDouble(), band.least().toDouble(), band.most().toDouble());
  }

  /**
   * How far outside the band what is fed lies, in percent of the programme.
   *
   * @param target grams intended for the meals that are met
   */
  double percentOff(double grams, double target) {
    double share = target / programme;
    double outside = Math.max(least * share - grams, grams - most * share);
    return Math.max(0, 100 * outside / programme);
  }
}
