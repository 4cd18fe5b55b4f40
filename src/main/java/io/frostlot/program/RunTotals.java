package io.frostlot.program;

import java.util.List;

/** What the meals of each run come to in a {@link Trial}, and how far that is outside its band. */
final class RunTotals {
  private static final double MILLIGRAMS = 1e-3;

  private final List<Menu.Run> runs;
  private final long[] fed;
  private final long[] intended;
  private final double[] off;

  /** Nobody eats. */
  RunTotals(List<Menu.Run> runs) {
    this.runs = runs;
    fed = new long[runs.size()];
    intended = new long[runs.size()];
    off = new double[runs.size()];
  }

  /** Percent outside the band. */
  double off(int run) {
    return off[run];
  }

  /**
   * More is fed.
   *
   * @param milligrams fed
   * @param target milligrams intended for the meals that they are fed in
   * @return by how much it is further outside
   */
  double add(int run, long milligrams, long target) {
    double further = further(run, milligrams, target);
    fed[run] += milligrams;
    intended[run] += target;
    off[run] += further;
    return further;
  }

  /** By how much it would be further outside. */
  double further(int run, long milligrams, long target) {
    double grams = MILLIGRAMS * (fed[run] + milligrams);
    double aim = MILLIGRAMS * (intended[run] + target);
    return runs.get(run).band().percentOff(grams, aim) - off[run];
  }
}
