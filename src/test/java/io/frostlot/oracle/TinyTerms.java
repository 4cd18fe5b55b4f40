package io.frostlot.oracle;

import io.frostlot.supply.DateBasis;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.units.Money;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Random sales and order terms. */
final class TinyTerms {
  private final Dice dice;
  private final List<Pack> packs;

  TinyTerms(Dice dice, List<Pack> packs) {
    this.dice = dice;
    this.packs = packs;
  }

  List<Sale> sales() {
    List<Sale> sales = new ArrayList<>();
    if (dice.has(Feature.SALE)) {
      sales.add(sale("spring"));
      if (dice.has(Feature.SECOND_SALE)) {
        sales.add(sale("clearance"));
      }
    }
    return sales;
  }

  private Period when() {
    return dice.oneIn(2) ? Period.ALWAYS : dice.days(2);
  }

  private Sale sale(String id) {
    Pack pack = dice.oneOf(packs);
    boolean limited = dice.has(Feature.SALE_LIMIT);
    return new Sale(
        id,
        when(),
        dice.oneOf(DateBasis.values()),
        dice.oneIn(2) ? Set.of() : Set.of(pack.item().name()),
        terms(pack),
        new Sale.Limits(
            limited && dice.oneIn(2) ? dice.between(1, 2) : Pack.UNLIMITED,
            limited && dice.oneIn(2) ? dice.between(1, 2) : Pack.UNLIMITED),
        dice.oneIn(2));
  }

  private Sale.Terms terms(Pack pack) {
    return switch (dice.between(0, 2)) {
      case 0 -> new Sale.PercentOff(percent(10, 60));
      case 1 ->
          new Sale.PriceOf(pack.price().times(BigDecimal.valueOf(dice.between(50, 95), 2), 2));
      default -> {
        int take = dice.between(2, 3);
        yield new Sale.TakeAndPay(take, dice.between(1, take - 1));
      }
    };
  }

  private Percent percent(int least, int most) {
    return new Percent(BigDecimal.valueOf(dice.between(least * 2, most * 2) * 5L, 1));
  }

  OrderTerms make() {
    List<OrderTerms.Discount> discounts = new ArrayList<>();
    if (dice.has(Feature.DISCOUNT)) {
      discounts.add(discount("loyal"));
      if (dice.has(Feature.SECOND_DISCOUNT)) {
        discounts.add(discount("bulk"));
      }
    }
    return new OrderTerms(
        discounts,
        dice.has(Feature.MINIMUM_ORDER)
            ? new OrderTerms.Threshold(value(), dice.oneOf(OrderTerms.Subtotal.values()))
            : OrderTerms.Threshold.NONE,
        dice.has(Feature.FREE_SHIPPING) ? List.of(freeShipping()) : List.of(),
        dice.has(Feature.TAX)
            ? new OrderTerms.Tax(percent(5, 20), dice.oneIn(2))
            : OrderTerms.Tax.INCLUDED);
  }

  /** A value that two to eight pieces may have. */
  private Money value() {
    return dice.cents(200, 800);
  }

  private OrderTerms.Discount discount(String id) {
    Money from = dice.oneIn(4) ? Money.ZERO : value();
    List<OrderTerms.Tier> tiers = new ArrayList<>();
    tiers.add(tier(from));
    if (dice.oneIn(2)) {
      tiers.add(tier(from.plus(dice.cents(50, 300))));
    }
    return new OrderTerms.Discount(
        id,
        when(),
        dice.oneOf(DateBasis.values()),
        dice.oneOf(OrderTerms.Subtotal.REGULAR_GOODS, OrderTerms.Subtotal.GOODS),
        tiers,
        dice.oneIn(2));
  }

  private OrderTerms.Tier tier(Money from) {
    boolean amount = dice.oneIn(2);
    return new OrderTerms.Tier(
        from,
        amount && dice.oneIn(2) ? Percent.ZERO : percent(5, 40),
        amount ? dice.cents(20, 400) : Money.ZERO);
  }

  private OrderTerms.FreeShipping freeShipping() {
    return new OrderTerms.FreeShipping(
        when(),
        dice.oneOf(DateBasis.values()),
        new OrderTerms.Threshold(value(), dice.oneOf(OrderTerms.Subtotal.values())),
        Set.copyOf(dice.someOf(List.of(OrderTerms.Charge.values()))));
  }
}
