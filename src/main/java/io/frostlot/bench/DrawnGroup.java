package io.frostlot.bench;

import io.frostlot.plan.Group;

/**
 * A group as it was drawn.
 *
 * @param size of each member's room
 */
public record DrawnGroup(RoomSize size, long seed, Group group) {
  String name() {
    return "group of " + group.keepers().size() + " " + size + " " + seed;
  }

  /** Do the others collect on set dates only? */
  boolean handsOver() {
    return !group.agreement().handOvers().isEmpty();
  }
}
