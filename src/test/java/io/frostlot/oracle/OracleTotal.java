package io.frostlot.oracle;

import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** From goods to what is paid: discounts, minimum order, charges, waivers, tax. */
record OracleTotal(Supplier supplier, Slot slot, int decimals) {

  /** In millionths; the regular part was bought under no sale. */
  record Goods(long all, long regular) {}

  /** Empty where the supplier does not take the order. */
  OptionalLong of(Goods goods, List<OrderTerms.Discount> taken, int boxes) {
    long discount = 0;
    for (OrderTerms.Discount one : taken) {
      long base = value(one.base(), goods, 0);
      OrderTerms.Tier reached = null;
      for (OrderTerms.Tier tier : one.tiers()) {
        if (base >= Amounts.of(tier.from())
            && (reached == null || tier.from().compareTo(reached.from()) >= 0)) {
          reached = tier;
        }
      }
      if (reached == null) {
        return OptionalLong.empty();
      }
      discount += Amounts.share(base, reached.percent(), decimals) + Amounts.of(reached.amount());
    }
    discount = Math.min(discount, goods.all);
    OrderTerms terms = supplier.terms();
    if (!reaches(terms.minimum(), goods, discount)) {
      return OptionalLong.empty();
    }
    Map<OrderTerms.Charge, Long> charges = charges(boxes);
    for (OrderTerms.FreeShipping free : terms.freeShipping()) {
      if (free.when().contains(slot.date(free.follows()))
          && reaches(free.threshold(), goods, discount)) {
        charges.keySet().removeAll(free.waives());
      }
    }
    long charged = charges.values().stream().mapToLong(c -> c).sum();
    long net = goods.all - discount;
    long tax =
        Amounts.share(terms.tax().onCharges() ? net + charged : net, terms.tax().rate(), decimals);
    return OptionalLong.of(net + charged + tax);
  }

  private static boolean reaches(OrderTerms.Threshold threshold, Goods goods, long discount) {
    return value(threshold.base(), goods, discount) >= Amounts.of(threshold.from());
  }

  private static long value(OrderTerms.Subtotal base, Goods goods, long discount) {
    return switch (base) {
      case REGULAR_GOODS -> goods.regular;
      case GOODS -> goods.all;
      case AFTER_DISCOUNT -> goods.all - discount;
    };
  }

  private Map<OrderTerms.Charge, Long> charges(int boxes) {
    Map<OrderTerms.Charge, Long> charges = new EnumMap<>(OrderTerms.Charge.class);
    Shipping shipping = supplier.shipping();
    for (Shipping.OrderCharge charge : shipping.orderCharges()) {
      if (charge.orderDates().contains(slot.ordered())) {
        charges.merge(OrderTerms.Charge.ORDER_CHARGE, Amounts.of(charge.amount()), Long::sum);
      }
    }
    if (supplier.isPickUp()) {
      return charges;
    }
    Shipping.Rate rate = shipping.rate();
    charges.put(
        OrderTerms.Charge.SHIPPING,
        Amounts.of(rate.perOrder())
            + Amounts.of(rate.firstBox())
            + (boxes - 1) * Amounts.of(rate.nextBox()));
    charges.put(
        OrderTerms.Charge.PACKING,
        Amounts.of(shipping.packing().perOrder())
            + boxes * Amounts.of(shipping.packing().perBox()));
    for (Shipping.Surcharge surcharge : shipping.surcharges()) {
      if (surcharge.shipDates().contains(slot.ships())) {
        charges.merge(
            OrderTerms.Charge.SURCHARGE,
            Amounts.of(surcharge.perOrder()) + boxes * Amounts.of(surcharge.perBox()),
            Long::sum);
      }
    }
    return charges;
  }
}
