package io.frostlot.app;

import io.frostlot.sharing.Game;
import io.frostlot.sharing.Subgroup;
import java.time.Duration;

/**
 * What subgroups of a group would pay by themselves, as far as it is known.
 *
 * @param wanted width to which each cost should be known, in money
 * @param took how long it took to find out
 */
public record SubgroupCosts(Game game, double wanted, Duration took) {
  /** How many there are, each member alone and all together among them. */
  public int count() {
    return Subgroup.within(game.all()).size();
  }

  /** Of how many the cost is known to the width wanted. */
  public int known() {
    return (int)
        Subgroup.within(game.all()).stream()
            .filter(some -> game.cost(some).width() <= wanted)
            .count();
  }

  /** How far apart least and most of the cost are that is known least. */
  public double widest() {
    return game.widest();
  }
}
