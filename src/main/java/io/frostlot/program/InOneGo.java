package io.frostlot.program;

import java.util.List;

/**
 * Serves dishes of a {@link Trial} that nobody has served, one after the other, as seems to weigh
 * least, and weighs what came of it only once. What an item can spare need not be found anew as
 * long as no more than that is taken of it: what may be eaten is a transversal matroid, so a piece
 * taken on one day leaves at most one fewer on any other. Where too much was told, since some would
 * have gone past its use-by anyway, nothing is served so.
 */
record InOneGo(Trial trial, Refilling refilling) {
  private static final int NOT = -1;

  /** What an item can spare is to be known anew first. */
  private static final int UNSURE = -2;

  /** May these be served so? */
  boolean suits(List<Integer> some) {
    return refilling.isPossible()
        && some.stream()
            .allMatch(
                dish ->
                    !trial.isServed(dish) && trial.menu().dishes().get(dish).promises().isEmpty());
  }

  /**
   * Is what came of it possible, and nothing lacking for safety that was not lacking before? Else
   * all is as it was.
   *
   * @param some none of them served
   */
  boolean serve(List<Integer> some) {
    int mark = trial.mark();
    double before = refilling.weight();
    int lacking = trial.lacking();
    boolean possible = some.stream().allMatch(this::serve);
    refilling.weigh();
    if (!possible || !refilling.isPossible() || trial.lacking() > lacking) {
      refilling.backTo(mark, before);
      return false;
    }
    return true;
  }

  /** As seems best, or not at all; is that possible? */
  private boolean serve(int dish) {
    int way = best(dish);
    if (way == UNSURE) {
      refilling.weigh();
      way = refilling.isPossible() ? best(dish) : way;
    }
    if (way >= 0) {
      trial.serve(dish, way);
    }
    return way != UNSURE;
  }

  private int best(int dish) {
    Outlook outlook = refilling.outlook();
    List<Menu.Way> ways = trial.menu().dishes().get(dish).ways();
    int best = NOT;
    double least = -Refilling.BETTER;
    int looks = outlook.maySpareAny(dish) ? ways.size() : 0;
    for (int w = 0; w < looks; w++) {
      if (outlook.maySpare(dish, ways.get(w))) {
        double more = outlook.more(dish, w);
        if (more < least) {
          if (!outlook.surelySpares(ways.get(w))) {
            return UNSURE;
          }
          least = more;
          best = w;
        }
      }
    }
    return best;
  }
}
