package io.frostlot.plan;

import io.frostlot.units.Litres;

/**
 * What a keeper who receives a joint order can keep for the others, besides its own freezers.
 *
 * @param room in litres
 * @param days at most so many from the arrival to the hand-over
 */
public record Waiting(Litres room, int days) {
  public static final Waiting NONE = new Waiting(Litres.ZERO, 0);

  public Waiting {
    if (days < 0) {
      throw new IllegalArgumentException("waiting " + days + " days");
    }
  }
}
