package io.frostlot.supply;

import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.util.List;
import java.util.Set;

/**
 * What a supplier does to an order as a whole, after the pack prices.
 *
 * @param discounts promotions on the order's value
 * @param minimum least order value
 * @param freeShipping thresholds, any of them may be reached
 * @param tax on top of the prices
 */
public record OrderTerms(
    List<Discount> discounts, Threshold minimum, List<FreeShipping> freeShipping, Tax tax) {
  public static final OrderTerms PLAIN =
      new OrderTerms(List.of(), Threshold.NONE, List.of(), Tax.INCLUDED);

  public OrderTerms {
    discounts = List.copyOf(discounts);
    freeShipping = List.copyOf(freeShipping);
  }

  public OrderTerms withDiscounts(List<Discount> others) {
    return new OrderTerms(others, minimum, freeShipping, tax);
  }

  public OrderTerms withMinimum(Threshold other) {
    return new OrderTerms(discounts, other, freeShipping, tax);
  }

  public OrderTerms withFreeShipping(List<FreeShipping> others) {
    return new OrderTerms(discounts, minimum, others, tax);
  }

  /** Which value of an order a step of the price ladder looks at. */
  public enum Subtotal {
    /** Goods bought under no sale. */
    REGULAR_GOODS,
    /** All goods after breaks and sales. */
    GOODS,
    /** Goods less the order discount. */
    AFTER_DISCOUNT
  }

  /** An order value to be reached. */
  public record Threshold(Money from, Subtotal base) {
    public static final Threshold NONE = new Threshold(Money.ZERO, Subtotal.GOODS);
  }

  /**
   * An order discount; of its tiers the highest that is reached counts.
   *
   * @param base value compared with the tiers, and the value the percentages are taken of; not
   *     AFTER_DISCOUNT
   */
  public record Discount(
      String id,
      Period when,
      DateBasis follows,
      Subtotal base,
      List<Tier> tiers,
      boolean combinable) {
    public Discount {
      tiers = List.copyOf(tiers);
      if (base == Subtotal.AFTER_DISCOUNT || tiers.isEmpty()) {
        throw new IllegalArgumentException("discount " + id + " on " + base + " with " + tiers);
      }
    }
  }

  /**
   * From this value on, this much off.
   *
   * @param percent of the base, rounded half-up to the minor unit
   * @param amount off on top
   */
  public record Tier(Money from, Percent percent, Money amount) {}

  /** Charges of an order that a threshold may waive. */
  public enum Charge {
    SHIPPING,
    PACKING,
    SURCHARGE,
    ORDER_CHARGE
  }

  /** From an order value on, some charges are waived. */
  public record FreeShipping(
      Period when, DateBasis follows, Threshold threshold, Set<Charge> waives) {
    public FreeShipping {
      waives = Set.copyOf(waives);
    }
  }

  /** Tax on top, in percent, of goods after discount and, where so, of the charges. */
  public record Tax(Percent rate, boolean onCharges) {
    public static final Tax INCLUDED = new Tax(Percent.ZERO, false);
  }
}
