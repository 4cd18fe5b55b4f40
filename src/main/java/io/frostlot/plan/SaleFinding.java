package io.frostlot.plan;

import io.frostlot.supply.Pack;
import io.frostlot.units.Percent;
import java.time.LocalDate;
import java.util.List;

/** What is found out about deals, one thing after another. */
public sealed interface SaleFinding {
  /**
   * The best plan with and without.
   *
   * @param packs what is bought under the deals
   * @param changes orders and money, from without to with
   */
  record Worth(
      List<Deal> deals,
      Solved without,
      Solved with,
      Difference difference,
      List<Taken> packs,
      Changes changes)
      implements SaleFinding {
    public Worth {
      deals = List.copyOf(deals);
      packs = List.copyOf(packs);
    }
  }

  /**
   * Packs of one row taken while a deal lasts.
   *
   * @param with in the best plan with it
   * @param without from the same supplier on the same dates, in the best plan without it
   */
  record Taken(Pack pack, int with, int without) {}

  /**
   * Net saving against packs.
   *
   * @param points by packs
   * @param turn packs in the best plan found, beyond which it pays no more
   * @param sure is it proven that no other number of packs saves more?
   * @param reasons why, the hardest first; empty where it was not found out
   * @param boxCharge of the best plan, in money; 0 where no box is paid for
   */
  record Curve(
      Deal deal, List<Point> points, int turn, boolean sure, List<Excess> reasons, double boxCharge)
      implements SaleFinding {
    public Curve {
      points = List.copyOf(points);
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * A point of the curve.
   *
   * @param atLeast that many are bought or more; otherwise that many or fewer, of a sale that many
   *     at its price
   * @param difference from the plan without the deal; none where no plan takes so many
   */
  record Point(int packs, boolean atLeast, List<Difference> difference) {
    public Point {
      difference = List.copyOf(difference);
    }
  }

  /** Each of several deals alone; what they are worth together is in {@link Worth}. */
  record Apart(List<Alone> alone) implements SaleFinding {
    public Apart {
      alone = List.copyOf(alone);
    }
  }

  /** One deal without the others. */
  record Alone(Deal deal, Difference difference) {}

  /**
   * The same when more meals are skipped than planned.
   *
   * @param skipped share of all meals
   * @param best what the deals are worth then
   * @param packs that were taken in the expectation that none would be skipped
   * @param asTaken what those are worth then; none where that is not known
   */
  record WorseCase(Percent skipped, Difference best, int packs, List<Difference> asTaken)
      implements SaleFinding {
    public WorseCase {
      asTaken = List.copyOf(asTaken);
    }
  }

  /**
   * Waiting for deals changes nothing.
   *
   * @param until the first day on which they hold
   * @param atOnce is that the first planning day? otherwise the plan without them orders nothing
   *     before it of what would wait
   */
  record NothingToWaitFor(LocalDate until, boolean atOnce) implements SaleFinding {}

  /** Something that was asked for and for which time did not do. */
  record NotKnown(Asked asked) implements SaleFinding {}

  /** What time may not do for. */
  enum Asked {
    CURVE,
    APART,
    WORSE_CASE,
    WAITING
  }

  /**
   * To wait for deals that are only likely.
   *
   * @param chance that they come
   * @param until the first day on which they hold
   * @param ifItComes what waiting gains over ordering now, when they come
   * @param ifItDoesNot what waiting gains over ordering now, when they do not
   * @param latestSafe the latest day up to which nothing need be ordered to meet the same meals;
   *     none where an order is due at once
   */
  record Waiting(
      Percent chance,
      LocalDate until,
      Difference ifItComes,
      Difference ifItDoesNot,
      List<LocalDate> latestSafe)
      implements SaleFinding {
    public Waiting {
      latestSafe = List.copyOf(latestSafe);
    }

    /** Are the same meals met whichever is done, so that money decides? */
    public boolean moneyDecides() {
      return ifItComes.sameMeals() && ifItDoesNot.sameMeals();
    }

    /** Money that waiting gains on average; negative where it loses. */
    public double expected() {
      double share = chance.fraction().doubleValue();
      return share * ifItComes.found().toDouble() + (1 - share) * ifItDoesNot.found().toDouble();
    }

    /** The chance from which on waiting gains on average, 0 to 1; above 1 where it never does. */
    public double breakEven() {
      double gain = ifItComes.found().toDouble();
      double loss = Math.max(0, -ifItDoesNot.found().toDouble());
      return gain <= 0 ? 2 : loss / (loss + gain);
    }
  }
}
