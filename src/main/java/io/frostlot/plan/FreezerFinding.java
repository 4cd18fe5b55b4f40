package io.frostlot.plan;

import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.List;

/** What is found out about freezers, one thing after another. */
public sealed interface FreezerFinding {
  /**
   * How full they get under the best plan found.
   *
   * @param loads by freezer
   * @param free room on every day on which something can come
   */
  record Use(Solved plan, List<FreezerLoad> loads, List<Free> free) implements FreezerFinding {
    public Use {
      loads = List.copyOf(loads);
      free = List.copyOf(free);
    }
  }

  /**
   * Room beside the plan in the freezers that are in use.
   *
   * @param thatDay the largest delivery that fits on the day
   * @param lasting the largest of which nothing need be eaten to make room for later deliveries
   */
  record Free(LocalDate day, Litres thatDay, Litres lasting) {}

  /**
   * What is at risk where a freezer fails.
   *
   * @param day on which it does
   * @param share of its room that is taken then, 1 = full
   * @param contents that do not all fit elsewhere or that do
   */
  record Loss(Freezer freezer, LocalDate day, double share, List<AtRisk> contents)
      implements FreezerFinding {
    public Loss {
      contents = List.copyOf(contents);
    }

    public int pieces() {
      return contents.stream().mapToInt(AtRisk::pieces).sum();
    }

    /** At the least regular price of a piece; what nobody sells counts nothing. */
    public Money money() {
      return contents.stream().map(AtRisk::money).reduce(Money.ZERO, Money::plus);
    }

    /**
     * Hours for which an unopened freezer keeps food frozen: about 48 full, 24 half full (extension
     * services on power cuts).
     */
    public int hours() {
      return share >= 0.9 ? 48 : (share >= 0.45 ? 24 : 0);
    }
  }

  /**
   * Pieces of one item in it.
   *
   * @param money to buy them again
   * @param fitElsewhere those for which another freezer in use has room, the dearest by litre first
   * @param eatFirst of the others those that meals of that day and the next two could take
   */
  record AtRisk(Item item, int pieces, Money money, int fitElsewhere, int eatFirst) {}

  /**
   * Money against the room of one freezer, all others as they are.
   *
   * @param points by litres
   * @param enough from here on more litres gain nothing, as far as was found
   */
  record Curve(Freezer freezer, List<Point> points, Litres enough) implements FreezerFinding {
    private static final double BEND = 0.25;

    public Curve {
      points = List.copyOf(points);
    }

    /**
     * Does what a litre is worth change at a point by more than a quarter, or from meals to money?
     */
    public boolean bendsAt(int i) {
      if (i == 0 || i + 1 >= points.size()) {
        return false;
      }
      boolean before = sameMeals(i - 1);
      boolean after = sameMeals(i);
      return (before && after)
          ? Math.abs(worth(i - 1) - worth(i)) > BEND * Math.max(worth(i - 1), worth(i))
          : before != after;
    }

    private boolean sameMeals(int i) {
      return points.get(i).plan().standing().sameBeforeMoney(points.get(i + 1).plan().standing());
    }

    /** Of one more litre at a point, in money; up to {@link #enough} only. */
    public double worth(int i) {
      Point from = points.get(i);
      Point to = points.get(i + 1);
      double litres =
          Math.min(to.litres().toDouble(), enough.toDouble()) - from.litres().toDouble();
      return litres <= 0 ? 0 : (from.plan().cost() - to.plan().cost()) / litres;
    }
  }

  /**
   * A point of the curve.
   *
   * @param plan the best found with so much room
   * @param difference from the plan with the room that there is
   */
  record Point(Litres litres, Solved plan, Difference difference) {}

  /**
   * One more deep freezer.
   *
   * @param difference from without to with, over the days that are planned
   * @param purchase what it costs
   */
  record OneMore(Freezer freezer, Difference difference, Purchase purchase, int days)
      implements FreezerFinding {

    /** Saved in a year by the plans found, running cost taken off; negative where it loses. */
    public double netPerYear() {
      return difference.found().toDouble() * 365 / days - purchase.runningPerYear().toDouble();
    }

    /** Years until it has paid for itself; infinite where it never does. */
    public double payBackYears() {
      return netPerYear() <= 0
          ? Double.POSITIVE_INFINITY
          : purchase.price().toDouble() / netPerYear();
    }
  }

  /** Price, and electricity by the year. */
  record Purchase(Money price, Money runningPerYear) {}

  /**
   * What to do where the plan does not fit well.
   *
   * @param unlimited from the plan with the room that there is to one with any room
   * @param thrownAway pieces that are thrown away by decision to make room
   */
  record Fit(Difference unlimited, int thrownAway) implements FreezerFinding {}
}
