package io.frostlot.plan;

import java.util.List;

/**
 * A group for which there is no joint order.
 *
 * @param stopped was the search for it asked to end?
 */
public record NothingShared(Group group, Without without, boolean stopped) {

  /**
   * Who has no plan of its own.
   *
   * @param member at most one; none where nobody is known to have none
   * @param none what its planning came to
   */
  public record Without(List<String> member, Answer none) {
    /** Nobody, as far as is known. */
    public static final Without NOBODY = new Without(List.of(), new Answer.NothingFound());

    public Without {
      member = List.copyOf(member);
    }
  }

  public boolean isImpossible() {
    return without.none() instanceof Answer.Impossible;
  }

  /** What clashes in the member's own plan, where it is impossible. */
  public List<String> clash() {
    return without.none() instanceof Answer.Impossible impossible ? impossible.clash() : List.of();
  }
}
