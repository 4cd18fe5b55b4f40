package io.frostlot.plan;

import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.units.Litres;
import io.frostlot.units.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

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
     * Is it certain that what a litre is worth changes at a point by more than a quarter, or from
     * meals to money?
     */
    public boolean bendsAt(int i) {
      if (i == 0 || i + 1 >= points.size() || !isKnown(i - 1) || !isKnown(i)) {
        return false;
      }
      boolean both = sameMeals(i - 1) && sameMeals(i);
      return both
          ? isMuchMore(worth(i - 1), worth(i)) || isMuchMore(worth(i), worth(i - 1))
          : sameMeals(i - 1) != sameMeals(i);
    }

    private static boolean isMuchMore(Interval one, Interval other) {
      return other.most().isPresent()
          && one.least().orElse(0) * (1 - BEND) > other.most().getAsDouble();
    }

    /** Is it proven at a point and the next how well meals can be met there? */
    public boolean isKnown(int i) {
      return points.get(i).plan().answer().bound().isPresent()
          && points.get(i + 1).plan().answer().bound().isPresent();
    }

    /** Are meals of the plans found as good at a point as at the next? */
    public boolean sameMeals(int i) {
      return points.get(i).plan().standing().sameBeforeMoney(points.get(i + 1).plan().standing());
    }

    /**
     * What one more litre at a point saves up to the next, or up to {@link #enough} where that is
     * any room, with both at their best: never less than nothing. Of use only where {@link
     * #isKnown}.
     */
    public Interval worth(int i) {
      Solved from = points.get(i).plan();
      Solved to = points.get(i + 1).plan();
      Litres next = i + 2 < points.size() ? points.get(i + 1).litres() : enough;
      double litres = next.toDouble() - points.get(i).litres().toDouble();
      Interval saves = Interval.saving(from, to).within(0, Double.POSITIVE_INFINITY);
      if (litres > 0) {
        return saves.times(1 / litres);
      }
      return saves.most().orElse(1) > 0
          ? new Interval(saves.least(), OptionalDouble.empty())
          : saves;
    }

    /** The plan with the room that there is. */
    public Solved asItIs() {
      return points.stream()
          .filter(point -> point.litres().equals(freezer.usable()))
          .map(Point::plan)
          .findFirst()
          .orElseThrow();
    }

    /** Is it proven that no room gains anything beyond what is enough? */
    public boolean isFlat() {
      Solved any = points.get(points.size() - 1).plan();
      return any.answer() instanceof Answer.Proven;
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

    /** Where that lies with both plans at their best. */
    public Interval netAtBest() {
      double running = purchase.runningPerYear().toDouble();
      return difference.saves().times(365.0 / days).minus(running);
    }

    /** Saved in a year by the plans found, running cost taken off; negative where it loses. */
    public double netPerYear() {
      return difference.found().toDouble() * 365 / days - purchase.runningPerYear().toDouble();
    }

    /** Years until it has paid for itself; infinite where it never does. */
    public double payBackYears() {
      return payBackYears(netPerYear());
    }

    /** The same at another saving a year. */
    public double payBackYears(double net) {
      return net <= 0 ? Double.POSITIVE_INFINITY : purchase.price().toDouble() / net;
    }
  }

  /**
   * Room in one freezer with which there is a plan, where there is none with the room that there
   * is.
   *
   * @param enough the least litres found that do, at most one
   * @param none the most litres for which it is certain that there is no plan
   * @param never is it certain that no room in that freezer would do?
   */
  record RoomInstead(Freezer freezer, List<Litres> enough, Litres none, boolean never) {
    public RoomInstead {
      enough = List.copyOf(enough);
    }
  }

  /** One more freezer where there is no plan without it: whether there is one with it. */
  record MoreInstead(Freezer freezer, Possible plan) {}

  /** Whether there is a plan. */
  enum Possible {
    YES,
    NO,
    NOT_KNOWN
  }

  /** Something that was asked for and for which time did not do. */
  record NotKnown(Asked asked) implements FreezerFinding {}

  /** What time may not do for. */
  enum Asked {
    CURVE,
    FIT,
    ONE_MORE
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
