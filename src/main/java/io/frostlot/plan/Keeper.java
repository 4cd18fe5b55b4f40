package io.frostlot.plan;

import io.frostlot.supply.Slots;

/**
 * A member of a group that orders together.
 *
 * @param name unique in the group
 * @param scenario what it would plan alone
 * @param waiting what it can keep for others when it receives an order
 */
public record Keeper(String name, Scenario scenario, Waiting waiting) {
  /** A name of this keeper's, told apart from those of others. */
  public String own(String name) {
    return name() + ": " + name;
  }

  /** The id of a supplier from which this keeper fetches for itself alone. */
  public String fetching(String supplier) {
    return supplier + " for " + name;
  }

  /** Is there a day on which it could receive or fetch an order? */
  boolean canReceive() {
    return scenario.suppliers().stream()
        .anyMatch(s -> !Slots.of(s, scenario.planning(), scenario.away()).isEmpty());
  }
}
