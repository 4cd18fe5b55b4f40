package io.frostlot.plan;

import io.frostlot.units.Money;
import io.frostlot.units.Percent;

/**
 * What the keeper has decided beforehand.
 *
 * @param demand must every meal be met?
 * @param tail what leftovers are worth
 * @param freezerCheck when freezer space is checked on a delivery day
 * @param charges reckoned money
 * @param safety margins, which give way before a meal does
 * @param adequacy how near an animal's grams should come to its programme; gives way too
 * @param ordering how much and how steadily to order
 * @param moves may prey be moved between freezers?
 */
public record Policy(
    Demand demand,
    Tail tail,
    FreezerCheck freezerCheck,
    Charges charges,
    Safety safety,
    Adequacy adequacy,
    Ordering ordering,
    MovesPolicy moves) {
  public static final Policy DEFAULT =
      new Policy(
          Demand.BEST_EFFORT,
          new Tail(182),
          FreezerCheck.AFTER_DELIVERY,
          Charges.NONE,
          Safety.NONE,
          Adequacy.NONE);

  /** Nothing is asked of orders, and nothing moved. */
  public Policy(
      Demand demand,
      Tail tail,
      FreezerCheck freezerCheck,
      Charges charges,
      Safety safety,
      Adequacy adequacy) {
    this(demand, tail, freezerCheck, charges, safety, adequacy, Ordering.FREE, MovesPolicy.NONE);
  }

  public Policy withDemand(Demand other) {
    return new Policy(other, tail, freezerCheck, charges, safety, adequacy, ordering, moves);
  }

  public Policy withTail(Tail other) {
    return new Policy(demand, other, freezerCheck, charges, safety, adequacy, ordering, moves);
  }

  public Policy withFreezerCheck(FreezerCheck other) {
    return new Policy(demand, tail, other, charges, safety, adequacy, ordering, moves);
  }

  public Policy withCharges(Charges other) {
    return new Policy(demand, tail, freezerCheck, other, safety, adequacy, ordering, moves);
  }

  public Policy withSafety(Safety other) {
    return new Policy(demand, tail, freezerCheck, charges, other, adequacy, ordering, moves);
  }

  public Policy withAdequacy(Adequacy other) {
    return new Policy(demand, tail, freezerCheck, charges, safety, other, ordering, moves);
  }

  public Policy withOrdering(Ordering other) {
    return new Policy(demand, tail, freezerCheck, charges, safety, adequacy, other, moves);
  }

  public Policy withMoves(MovesPolicy other) {
    return new Policy(demand, tail, freezerCheck, charges, safety, adequacy, ordering, other);
  }

  /** Unmet meals are counted, or forbidden. */
  public enum Demand {
    BEST_EFFORT,
    ALL
  }

  /** When freezer space is checked. */
  public enum FreezerCheck {
    AFTER_DELIVERY,
    END_OF_DAY
  }

  /**
   * Days after the planning days whose meals are served by leftovers or bought at the tail price.
   *
   * @param days 0 = leftovers are worth nothing
   */
  public record Tail(int days) {
    public static final Tail NONE = new Tail(0);

    public Tail {
      if (days < 0) {
        throw new IllegalArgumentException("tail of " + days + " days");
      }
    }
  }

  /**
   * Reckoned charges, none negative.
   *
   * @param holding per night
   * @param order effort per order
   * @param deliveryDay effort per day on which something arrives
   * @param lateMeal per meal and day late
   * @param pastBest per piece eaten after its best before
   */
  public record Charges(
      HoldingCharge holding, Money order, Money deliveryDay, Money lateMeal, Money pastBest) {
    public static final Charges NONE = new Charges(Money.ZERO, Money.ZERO, Money.ZERO, Money.ZERO);

    /**
     * Nothing is charged by the litre or for what is past its best.
     *
     * @param holding per piece and night
     */
    public Charges(Money holding, Money order, Money deliveryDay, Money lateMeal) {
      this(new HoldingCharge(holding, Money.ZERO), order, deliveryDay, lateMeal, Money.ZERO);
    }

    public Charges withEffort(Money ofAnOrder, Money ofADeliveryDay) {
      return new Charges(holding, ofAnOrder, ofADeliveryDay, lateMeal, pastBest);
    }

    public Charges withHolding(HoldingCharge other) {
      return new Charges(other, order, deliveryDay, lateMeal, pastBest);
    }

    public Charges withLateMeal(Money other) {
      return new Charges(holding, order, deliveryDay, other, pastBest);
    }

    public Charges withPastBest(Money other) {
      return new Charges(holding, order, deliveryDay, lateMeal, other);
    }
  }

  /**
   * Margins.
   *
   * @param coverDays pieces that arrived less than so many days ago should still be there at night
   * @param margin share of a size band's pieces eaten between two deliveries that should be left
   *     when the second comes
   * @param secondFreezer of how many days' food the loss of one freezer should not deprive animals
   *     that must eat
   */
  public record Safety(int coverDays, Percent margin, SecondFreezer secondFreezer) {
    public static final Safety NONE = new Safety(0, Percent.ZERO);

    /** Nothing is asked of a second freezer. */
    public Safety(int coverDays, Percent margin) {
      this(coverDays, margin, SecondFreezer.NONE);
    }

    public Safety withSecondFreezer(SecondFreezer other) {
      return new Safety(coverDays, margin, other);
    }
  }

  /**
   * Food outside any one freezer, where there are two.
   *
   * @param days of must-meals that it should last for; 0 = nothing is asked
   */
  public record SecondFreezer(int days) {
    public static final SecondFreezer NONE = new SecondFreezer(0);

    public SecondFreezer {
      if (days < 0) {
        throw new IllegalArgumentException("food for " + days + " days in a second freezer");
      }
    }
  }

  /**
   * Over any four meals in a row (all where there are fewer) and any eight weeks the grams fed to
   * an animal should stay within these shares of its programme.
   *
   * @param asked false: any window of a meal will do
   */
  public record Adequacy(boolean asked, Percent least, Percent most) {
    public static final Adequacy NONE = new Adequacy(false, Percent.of("97"), Percent.of("105"));
  }

  /**
   * What is asked of orders.
   *
   * @param budget what they should cost at most; gives way before a meal does
   * @param calm how soon and how dearly a plan that follows another may change its orders
   */
  public record Ordering(Budget budget, Calm calm) {
    public static final Ordering FREE = new Ordering(Budget.NONE, Calm.NONE);

    public Ordering withBudget(Budget other) {
      return new Ordering(other, calm);
    }
  }

  /**
   * How steady a plan stays that is made anew.
   *
   * @param days orders dated up to so many days after the first planning day are due soon
   * @param charge reckoned for each of them that is changed, dropped or added
   */
  public record Calm(int days, Money charge) {
    public static final Calm NONE = new Calm(0, Money.ZERO);

    public Calm {
      if (days < 0 || charge.isNegative()) {
        throw new IllegalArgumentException("calm of " + days + " days at " + charge);
      }
    }

    /** May anything be changed? */
    public boolean isNone() {
      return days == 0 || charge.isZero();
    }
  }

  /**
   * What invoices should come to at most; an amount of zero asks for nothing.
   *
   * @param perOrder of one order
   * @param perMonth of all orders that are dated in one calendar month
   * @param spent in the month of the first planning day, before that day
   */
  public record Budget(Money perOrder, Money perMonth, Money spent) {
    public static final Budget NONE = new Budget(Money.ZERO, Money.ZERO, Money.ZERO);

    public Budget {
      if (perOrder.isNegative() || perMonth.isNegative() || spent.isNegative()) {
        throw new IllegalArgumentException("a budget below zero");
      }
    }

    /** Is neither an order nor a month limited? */
    public boolean isNone() {
      return perOrder.isZero() && perMonth.isZero();
    }
  }
}
