package io.frostlot.program;

import io.frostlot.supply.Boxing;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Supplier;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;

/**
 * A supplier for the test of one rule: a shop that is open every day and does nothing to an order,
 * unless the test says so.
 */
final class SmallSupplier {
  private static final Delivery.Lead AT_ONCE = new Delivery.Lead(0, false, 0, List.of());
  private static final Set<DayOfWeek> EVERY_DAY = Set.of(DayOfWeek.values());

  /** A carrier that leaves every day and is there the same day. */
  static final Delivery CARRIER =
      new Delivery.Shipped(AT_ONCE, EVERY_DAY, new Delivery.Transit(0, 0));

  private final String id;
  private final List<Pack> packs;
  private List<PriceBreak> breaks = List.of();
  private List<Sale> sales = List.of();
  private List<OrderTerms.Discount> discounts = List.of();
  private OrderTerms.Threshold minimum = OrderTerms.Threshold.NONE;
  private List<OrderTerms.FreeShipping> freeShipping = List.of();
  private OrderTerms.Tax tax = OrderTerms.Tax.INCLUDED;
  private Boxing boxing = Boxing.NONE;
  private Shipping shipping = Shipping.NONE;
  private Delivery delivery = new Delivery.Shop(AT_ONCE, EVERY_DAY);

  private SmallSupplier(String id, List<Pack> packs) {
    this.id = id;
    this.packs = packs;
  }

  static SmallSupplier selling(Pack... packs) {
    return named(SmallWorld.SOURCE, packs);
  }

  static SmallSupplier named(String id, Pack... packs) {
    return new SmallSupplier(id, List.of(packs));
  }

  SmallSupplier breaks(PriceBreak... some) {
    breaks = List.of(some);
    return this;
  }

  SmallSupplier sales(Sale... some) {
    sales = List.of(some);
    return this;
  }

  SmallSupplier discounts(OrderTerms.Discount... some) {
    discounts = List.of(some);
    return this;
  }

  SmallSupplier minimum(OrderTerms.Threshold least) {
    minimum = least;
    return this;
  }

  SmallSupplier freeShipping(OrderTerms.FreeShipping... some) {
    freeShipping = List.of(some);
    return this;
  }

  SmallSupplier tax(OrderTerms.Tax onTop) {
    tax = onTop;
    return this;
  }

  /** In these boxes, by a carrier that is there the same day. */
  SmallSupplier boxing(Boxing way) {
    boxing = way;
    return delivery(CARRIER);
  }

  SmallSupplier shipping(Shipping charges) {
    shipping = charges;
    return this;
  }

  SmallSupplier delivery(Delivery way) {
    delivery = way;
    return this;
  }

  Supplier supplier() {
    return new Supplier(
        id,
        id + " (invented)",
        new Supplier.PriceSheet(SmallWorld.day(1), packs, breaks, sales),
        new OrderTerms(discounts, minimum, freeShipping, tax),
        boxing,
        shipping,
        delivery);
  }
}
