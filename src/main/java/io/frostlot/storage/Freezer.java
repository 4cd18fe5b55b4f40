package io.frostlot.storage;

import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import java.time.LocalDate;

/**
 * A freezer for prey.
 *
 * @param name unique
 * @param usable room that prey may take
 * @param kind "household" or "deep", shown
 * @param life how long prey keeps in it
 * @param inUse may new prey be put into it?
 */
public record Freezer(String name, Litres usable, String kind, Life life, boolean inUse) {

  /**
   * Shelf life in days.
   *
   * @param days for most prey, at least 1
   * @param smallBelow prey with a lower mean mass dries out first; zero where no difference is made
   * @param smallDays its shelf life
   */
  public record Life(int days, Grams smallBelow, int smallDays) {
    public Life {
      if (days < 1 || smallDays < 1) {
        throw new IllegalArgumentException("shelf life of " + days + " and " + smallDays + " days");
      }
    }

    public static Life of(int days) {
      return new Life(days, Grams.ZERO, days);
    }
  }

  public int lifeDays(Item item) {
    return item.grams().mean().compareTo(life.smallBelow()) < 0 ? life.smallDays() : life.days();
  }

  /** The same freezer under another name. */
  public Freezer named(String other) {
    return new Freezer(other, usable, kind, life, inUse);
  }

  public Freezer withUsable(Litres other) {
    return new Freezer(name, other, kind, life, inUse);
  }

  public Freezer withLife(Life other) {
    return new Freezer(name, usable, kind, other, inUse);
  }

  /** The last usable day of a piece that arrived on the given day. */
  public LocalDate useBy(Item item, LocalDate arrived) {
    return arrived.plusDays(lifeDays(item) - 1L);
  }
}
