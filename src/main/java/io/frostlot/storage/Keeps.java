package io.frostlot.storage;

import java.time.LocalDate;

/**
 * The two dates of prey in a freezer.
 *
 * @param bestBefore last day on which it is at its best, not after {@code useBy}
 * @param useBy last usable day
 */
public record Keeps(LocalDate bestBefore, LocalDate useBy) {
  public Keeps {
    if (bestBefore.isAfter(useBy)) {
      throw new IllegalArgumentException("best before " + bestBefore + ", use by " + useBy);
    }
  }

  /** At its best until it is past its use-by. */
  public static Keeps until(LocalDate useBy) {
    return new Keeps(useBy, useBy);
  }
}
