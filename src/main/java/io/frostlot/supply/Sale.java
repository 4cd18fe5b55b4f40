package io.frostlot.supply;

import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.util.Set;

/**
 * A promotion on single packs.
 *
 * @param id unique within the supplier
 * @param when dates on which it holds
 * @param follows which date of the order must lie in {@code when}
 * @param itemNames items it holds for; empty means all
 * @param limits packs that may be bought under it
 * @param combinable may an order that takes it take another promotion too?
 */
public record Sale(
    String id,
    Period when,
    DateBasis follows,
    Set<String> itemNames,
    Terms terms,
    Limits limits,
    boolean combinable) {

  public Sale {
    itemNames = Set.copyOf(itemNames);
  }

  public boolean covers(Pack pack) {
    return itemNames.isEmpty() || itemNames.contains(pack.item().name());
  }

  public Sale withLimits(Limits other) {
    return new Sale(id, when, follows, itemNames, terms, other, combinable);
  }

  /** Most packs under the sale, {@link Pack#UNLIMITED} where there is no limit. */
  public record Limits(int perOrder, int inTotal) {
    public static final Limits NONE = new Limits(Pack.UNLIMITED, Pack.UNLIMITED);
  }

  /** What the sale does to the price of a pack. */
  public sealed interface Terms {
    /**
     * About what each of many packs costs.
     *
     * @param regular price
     */
    double ofMany(double regular);
  }

  /** Off the pack price, then rounded to the minor unit. */
  public record PercentOff(Percent percent) implements Terms {
    @Override
    public double ofMany(double regular) {
      return regular * percent.complement().doubleValue();
    }
  }

  /** This price a pack instead, whatever the number of packs. */
  public record PriceOf(Money price) implements Terms {
    @Override
    public double ofMany(double regular) {
      return price.toDouble();
    }
  }

  /**
   * Of each full group of {@code take} packs of one row in one order, {@code pay} are paid.
   *
   * @param pay less than {@code take}, at least 1
   */
  public record TakeAndPay(int take, int pay) implements Terms {
    public TakeAndPay {
      if (pay < 1 || pay >= take) {
        throw new IllegalArgumentException(take + " for the price of " + pay);
      }
    }

    @Override
    public double ofMany(double regular) {
      return regular * pay / take;
    }
  }
}
