package io.frostlot.plan;

import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import java.util.List;

/**
 * Keepers who order together.
 *
 * @param name shown
 * @param keepers at least one, with the same days, money and policy
 */
public record Group(String name, List<Keeper> keepers, Agreement agreement, Terms terms) {
  public Group {
    keepers = List.copyOf(keepers);
  }

  /**
   * How money is shared.
   *
   * @param way id of the way
   * @param base part that is shared equally, where the way has one
   * @param hostCredit what the others together pay the host per joint order
   */
  public record Terms(String way, Percent base, Money hostCredit) {
    /** Does the way look at what subgroups would pay? */
    public boolean needsSubgroups() {
      return way.equals("shapley") || way.equals("nucleolus");
    }
  }

  /** What every keeper has in common is read off the first. */
  public Scenario first() {
    return keepers.get(0).scenario();
  }

  public List<String> names() {
    return keepers.stream().map(Keeper::name).toList();
  }
}
