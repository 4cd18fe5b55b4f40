package io.frostlot.supply;

import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.util.List;

/**
 * What it costs and how long it takes to bring an order to the keeper's place, zone looked up.
 *
 * @param rate shipping proper
 * @param packing required insulated box or cooling
 * @param surcharges by ship date; those that hold on the same day add up
 * @param orderCharges flat, by order date; those that hold on the same day add up
 */
public record Shipping(
    Rate rate, Packing packing, List<Surcharge> surcharges, List<OrderCharge> orderCharges) {
  public static final Shipping NONE = new Shipping(Rate.FREE, Packing.FREE, List.of(), List.of());

  public Shipping {
    surcharges = List.copyOf(surcharges);
    orderCharges = List.copyOf(orderCharges);
  }

  /** Per order, plus one amount for the first box and one for each further box. */
  public record Rate(Money perOrder, Money firstBox, Money nextBox) {
    public static final Rate FREE = new Rate(Money.ZERO, Money.ZERO, Money.ZERO);
  }

  public record Packing(Money perOrder, Money perBox) {
    public static final Packing FREE = new Packing(Money.ZERO, Money.ZERO);
  }

  public record Surcharge(Period shipDates, Money perOrder, Money perBox) {}

  public record OrderCharge(Period orderDates, Money amount) {}
}
