package io.frostlot.program;

import io.frostlot.supply.OrderTerms;
import java.util.EnumMap;
import java.util.Map;

/**
 * The running values of one order as expressions, in major units of money; the counterpart of
 * {@code Books.Ledger}.
 */
final class OrderSums {
  private final Linear regularGoods = new Linear();
  private final Linear goods = new Linear();
  private final Linear discount = new Linear();
  private final Linear tax = new Linear();
  private final Map<OrderTerms.Charge, Linear> charges = new EnumMap<>(OrderTerms.Charge.class);

  void addGoods(Linear amount) {
    goods.plus(amount);
    regularGoods.plus(amount);
  }

  /** Moves goods from "under no sale" to "under a sale"; changes no total. */
  void markUnderSale(Linear amount) {
    regularGoods.minus(amount);
  }

  /** Changes what goods under a sale cost, mostly by a negative amount. */
  void addToSaleGoods(Linear amount) {
    goods.plus(amount);
  }

  void addDiscount(Linear amount) {
    discount.plus(amount);
  }

  void addTax(Linear amount) {
    tax.plus(amount);
  }

  void addCharge(OrderTerms.Charge kind, Linear amount) {
    charge(kind).plus(amount);
  }

  Linear charge(OrderTerms.Charge kind) {
    return charges.computeIfAbsent(kind, k -> new Linear());
  }

  Linear allCharges() {
    Linear sum = new Linear();
    charges.values().forEach(sum::plus);
    return sum;
  }

  /** What the invoice comes to. */
  Linear total() {
    return value(OrderTerms.Subtotal.AFTER_DISCOUNT).plus(allCharges()).plus(tax);
  }

  Linear value(OrderTerms.Subtotal base) {
    return switch (base) {
      case REGULAR_GOODS -> regularGoods.copy();
      case GOODS -> goods.copy();
      case AFTER_DISCOUNT -> goods.copy().minus(discount);
    };
  }
}
