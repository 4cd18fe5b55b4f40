package io.frostlot.sharing;

import java.util.List;

/**
 * Whether somebody has a reason to leave, at given shares; said only where it is certain.
 *
 * @param better parts of the group that surely pay less by themselves
 * @param unsettled parts of which it is not known
 */
public record Leaving(List<Subgroup> better, List<Subgroup> unsettled) {
  public Leaving {
    better = List.copyOf(better);
    unsettled = List.copyOf(unsettled);
  }

  /**
   * Looks at every part.
   *
   * @param shares in major units, by member
   * @param rounding money below which a difference may come from rounding shares
   */
  public static Leaving of(Game game, double[] shares, double rounding) {
    double little = Math.max(rounding, LeastPain.TOLERANCE);
    List<Subgroup> better =
        game.parts().stream()
            .filter(some -> some.sum(shares) > game.cost(some).most() + little)
            .toList();
    List<Subgroup> unsettled =
        game.parts().stream()
            .filter(some -> !better.contains(some))
            .filter(some -> some.sum(shares) > game.cost(some).least() + little)
            .toList();
    return new Leaving(better, unsettled);
  }

  /** Surely nobody. */
  public boolean isNobody() {
    return better.isEmpty() && unsettled.isEmpty();
  }
}
