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
   * @param best how long any prey is at its best
   */
  public record Life(int days, Grams smallBelow, int smallDays, Best best) {
    public Life {
      if (days < 1 || smallDays < 1) {
        throw new IllegalArgumentException("shelf life of " + days + " and " + smallDays + " days");
      }
    }

    /** At its best for as long as it keeps. */
    public Life(int days, Grams smallBelow, int smallDays) {
      this(days, smallBelow, smallDays, Best.ALWAYS);
    }

    public static Life of(int days) {
      return new Life(days, Grams.ZERO, days);
    }

    public Life withBest(Best other) {
      return new Life(days, smallBelow, smallDays, other);
    }
  }

  /**
   * Days for which prey is at its best, where it keeps as long; at least 1.
   *
   * @param days the day of arrival included
   */
  public record Best(int days) {
    public static final Best ALWAYS = new Best(36_500);

    public Best {
      if (days < 1) {
        throw new IllegalArgumentException("at its best for " + days + " days");
      }
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

  /** The two dates of a piece that arrived on the given day. */
  public Keeps keeps(Item item, LocalDate arrived) {
    int best = Math.min(life.best().days(), lifeDays(item));
    return new Keeps(arrived.plusDays(best - 1L), useBy(item, arrived));
  }
}
