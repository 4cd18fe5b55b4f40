package io.frostlot.storage;

import io.frostlot.supply.Item;
import io.frostlot.units.Grams;
import io.frostlot.units.Litres;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A freezer for prey.
 *
 * @param name unique
 * @param usable room that prey may take, where it is not limited on a day
 * @param kind "household" or "deep", shown
 * @param life how long prey keeps in it
 * @param access whether, when and beside what prey may lie in it
 */
public record Freezer(String name, Litres usable, String kind, Life life, Access access) {

  /** For prey alone, on all days. */
  public Freezer(String name, Litres usable, String kind, Life life, boolean inUse) {
    this(name, usable, kind, life, new Access(inUse, Company.NONE, List.of()));
  }

  /**
   * Whether, when and beside what prey may lie in a freezer.
   *
   * @param inUse may new prey be put into it?
   * @param limits days on which prey may take less room, in any order; of several the least holds
   */
  public record Access(boolean inUse, Company company, List<Limit> limits) {
    public Access {
      limits = List.copyOf(limits);
    }
  }

  /** What else lies in a freezer. */
  public enum Company {
    NONE,
    FOOD,
    /** Food, from which prey is not said to be kept sealed; only that keeps it out of use. */
    FOOD_UNSEALED
  }

  /** Room that prey may take on some days. */
  public record Limit(Period days, Litres litres) {
    public static final Comparator<Limit> IN_ORDER =
        Comparator.comparing((Limit limit) -> limit.days().from())
            .thenComparing(limit -> limit.days().to())
            .thenComparing(Limit::litres);
  }

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

  /** May new prey be put into it? */
  public boolean inUse() {
    return access.inUse();
  }

  /** Room that prey may take on a day. */
  public Litres usableOn(LocalDate day) {
    Litres least = usable;
    for (Limit limit : access.limits()) {
      boolean holds = limit.days().contains(day) && limit.litres().compareTo(least) < 0;
      least = holds ? limit.litres() : least;
    }
    return least;
  }

  /**
   * Days within a period on which less room may begin, so that what lies in it must be looked at.
   */
  public Stream<LocalDate> limitedFrom(Period within) {
    return access.limits().stream()
        .map(limit -> limit.days().from())
        .filter(within::contains)
        .distinct();
  }

  /** The same freezer under another name. */
  public Freezer named(String other) {
    return new Freezer(other, usable, kind, life, access);
  }

  /** With other room on days on which it is not limited. */
  public Freezer withUsable(Litres other) {
    return new Freezer(name, other, kind, life, access);
  }

  /** With other room on every day. */
  public Freezer withRoom(UnaryOperator<Litres> change) {
    List<Limit> limits =
        access.limits().stream()
            .map(limit -> new Limit(limit.days(), change.apply(limit.litres())))
            .toList();
    return withUsable(change.apply(usable))
        .withAccess(new Access(access.inUse(), access.company(), limits));
  }

  public Freezer withAccess(Access other) {
    return new Freezer(name, usable, kind, life, other);
  }

  public Freezer withLife(Life other) {
    return new Freezer(name, usable, kind, other, access);
  }

  /** The last usable day of a piece that arrived on the given day. */
  public LocalDate useBy(Item item, LocalDate arrived) {
    return arrived.plusDays(lifeDays(item) - 1L);
  }

  /**
   * The two dates of a piece that is moved here: the share of life that is left there is left here
   * too, rounded down to days.
   *
   * @param there its dates where it lay before
   * @param day of the move, the first here
   */
  public Keeps keepsMoved(Item item, Freezer from, Keeps there, LocalDate day) {
    long useBy = left(there.useBy(), day) * lifeDays(item) / from.lifeDays(item);
    long best = left(there.bestBefore(), day) * bestDays(item) / from.bestDays(item);
    return new Keeps(day.plusDays(Math.min(best, useBy) - 1), day.plusDays(useBy - 1));
  }

  /** Days from one day to a date, both included. */
  private static long left(LocalDate date, LocalDate from) {
    return Math.max(0, from.until(date, ChronoUnit.DAYS) + 1);
  }

  private int bestDays(Item item) {
    return Math.min(life.best().days(), lifeDays(item));
  }

  /** The two dates of a piece that arrived on the given day. */
  public Keeps keeps(Item item, LocalDate arrived) {
    return new Keeps(arrived.plusDays(bestDays(item) - 1L), useBy(item, arrived));
  }
}
