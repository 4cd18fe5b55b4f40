package io.frostlot.bench;

import io.frostlot.supply.DateBasis;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The three promotions of a drawn room, two weeks each: 15 % off half of the items, with a limit
 * per order; four packs for the price of three, with a limit in total; a discount on the order
 * value in two tiers, around the value of a usual order. And free shipping from a value above it.
 */
final class Promotions {
  private static final int DAYS = 14;
  private final RoomSize size;
  private final Period planning;
  private final Calibration calibration;

  Promotions(RoomSize size, Period planning, Calibration calibration) {
    this.size = size;
    this.planning = planning;
    this.calibration = calibration;
  }

  /** Two weeks that begin at a part of the planning. */
  Period window(double part) {
    long days = ChronoUnit.DAYS.between(planning.from(), planning.to()) + 1;
    LocalDate from = planning.from().plusDays(Math.round(part * days));
    return new Period(from, from.plusDays(DAYS - 1));
  }

  /**
   * The sales of the first carrier.
   *
   * @param withFreePacks has no other carrier the free packs?
   */
  List<Sale> sales(List<Pack> packs, boolean withFreePacks) {
    Set<String> half = new HashSet<>();
    for (int i = 0; i < packs.size(); i += 4) {
      half.add(packs.get(i).item().name());
    }
    List<Sale> sales = new ArrayList<>();
    sales.add(
        new Sale(
            "half of it",
            window(0.12),
            DateBasis.ORDER,
            half,
            new Sale.PercentOff(Percent.of("15")),
            new Sale.Limits(12 * size.packFactor(), Pack.UNLIMITED),
            true));
    if (withFreePacks) {
      sales.addAll(freePacks(packs));
    }
    return sales;
  }

  List<Sale> freePacks(List<Pack> packs) {
    Set<String> rats =
        packs.stream()
            .map(Pack::item)
            .filter(item -> item.kind().equals("rat"))
            .map(item -> item.name())
            .collect(Collectors.toSet());
    return List.of(
        new Sale(
            "fourth pack",
            window(0.55),
            DateBasis.ARRIVAL,
            rats,
            new Sale.TakeAndPay(4, 3),
            new Sale.Limits(Pack.UNLIMITED, 16 * size.packFactor()),
            false));
  }

  List<OrderTerms.Discount> discounts() {
    return List.of(
        new OrderTerms.Discount(
            "by value",
            window(0.4),
            DateBasis.SHIP,
            OrderTerms.Subtotal.GOODS,
            List.of(
                new OrderTerms.Tier(value(0.7), Percent.of("5"), Money.ZERO),
                new OrderTerms.Tier(value(1.4), Percent.of("9"), Money.ZERO)),
            false));
  }

  List<OrderTerms.FreeShipping> freeShipping() {
    return List.of(
        new OrderTerms.FreeShipping(
            Period.ALWAYS,
            DateBasis.ORDER,
            new OrderTerms.Threshold(value(1.7), OrderTerms.Subtotal.AFTER_DISCOUNT),
            Set.of(OrderTerms.Charge.SHIPPING)));
  }

  private Money value(double orders) {
    return Chance.money(orders * calibration.orderValue());
  }
}
