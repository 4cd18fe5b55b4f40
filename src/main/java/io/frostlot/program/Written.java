package io.frostlot.program;

import io.frostlot.supply.Slot;
import java.util.Optional;
import java.util.Set;

/** A world written down as a program, or a relaxation of it, of which parts can be written too. */
interface Written {
  Program program();

  /**
   * The same of fewer deliveries; it may say more, but of no plan that does without these.
   *
   * @param closed of the program's orders, those that are not placed
   */
  Written without(Set<Slot> closed);

  /** Less of a relaxation; empty where it is none, or that would be too large a program. */
  Optional<Written> finer();

  /**
   * Something may be made of a point at which all counts are whole.
   *
   * @param point of {@link #program}, in which what follows may be real
   */
  void whole(double[] point);
}
