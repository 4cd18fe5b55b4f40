package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Shipping;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.util.EnumMap;
import java.util.Map;

/**
 * What an order is charged beyond its goods: per order and per box, the first box at its own price.
 *
 * <p>charge(o) = once x open(o) + per box x boxes(o), with the first box's difference in "once". A
 * pick-up is charged only what depends on the order date.
 */
final class ShippingCharge implements Rule {
  private final World world;

  ShippingCharge(World world) {
    this.world = world;
  }

  /** Money once per order, and per box. */
  private record Tariff(Money once, Money perBox) {}

  @Override
  public String id() {
    return "shipping";
  }

  @Override
  public String says() {
    return "Shipping, packing and surcharges are paid per order and per box.";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  private static Map<OrderTerms.Charge, Tariff> tariffs(Supplier supplier, Slot slot) {
    Shipping shipping = supplier.shipping();
    Map<OrderTerms.Charge, Tariff> tariffs = new EnumMap<>(OrderTerms.Charge.class);
    Money once = Money.ZERO;
    for (Shipping.OrderCharge charge : shipping.orderCharges()) {
      once = charge.orderDates().contains(slot.ordered()) ? once.plus(charge.amount()) : once;
    }
    tariffs.put(OrderTerms.Charge.ORDER_CHARGE, new Tariff(once, Money.ZERO));
    if (supplier.isPickUp()) {
      return tariffs;
    }
    Shipping.Rate rate = shipping.rate();
    tariffs.put(
        OrderTerms.Charge.SHIPPING,
        new Tariff(rate.perOrder().plus(rate.firstBox()).minus(rate.nextBox()), rate.nextBox()));
    tariffs.put(
        OrderTerms.Charge.PACKING,
        new Tariff(shipping.packing().perOrder(), shipping.packing().perBox()));
    Tariff surcharge = new Tariff(Money.ZERO, Money.ZERO);
    for (Shipping.Surcharge s : shipping.surcharges()) {
      if (s.shipDates().contains(slot.ships())) {
        surcharge =
            new Tariff(surcharge.once().plus(s.perOrder()), surcharge.perBox().plus(s.perBox()));
      }
    }
    tariffs.put(OrderTerms.Charge.SURCHARGE, surcharge);
    return tariffs;
  }

  /** The most that an order can be charged, all its boxes full. */
  static double most(Supplier supplier, Slot slot) {
    int boxes = supplier.isPickUp() ? 0 : supplier.boxing().mostBoxes();
    return tariffs(supplier, slot).values().stream()
        .mapToDouble(t -> t.once().plus(t.perBox().times(boxes)).toDouble())
        .sum();
  }

  @Override
  public void impose(Program program) {
    for (OrderDecisions order : program.decisions().orders().values()) {
      tariffs(order.supplier(), order.slot())
          .forEach(
              (kind, tariff) -> {
                Linear amount =
                    new Linear()
                        .plus(tariff.once().toDouble(), order.open())
                        .plus(tariff.perBox().toDouble(), order.boxes());
                order.sums().addCharge(kind, amount);
                program.charge(this, amount);
              });
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Order order : plan.orders()) {
      tariffs(world.supplier(order.slot().supplier()), order.slot())
          .forEach(
              (kind, tariff) -> {
                Money amount = tariff.once().plus(tariff.perBox().times(order.boxes().count()));
                books.ledger(order.slot()).addCharge(kind, amount);
                books.cash(id(), order.slot(), amount);
              });
    }
  }
}
