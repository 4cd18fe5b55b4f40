package io.frostlot.app;

import io.frostlot.plan.Deal;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Supplier;
import java.util.List;

/**
 * The most that a sale on so many packs can be worth: the plan that is best with it could also be
 * followed without it, at the regular price of those packs. Since the other is better still or the
 * same, a sale is worth no more than packs x the most that it takes off one of them (and the tax on
 * that).
 */
final class DealWorth {
  private DealWorth() {}

  /** Infinite where a deal is not limited, or is not on packs. */
  static double most(World world, List<? extends Deal> deals) {
    double most = 0;
    for (Deal deal : deals) {
      if (!(deal instanceof Deal.OnPacks sale)
          || sale.sale().limits().inTotal() == Pack.UNLIMITED) {
        return Double.POSITIVE_INFINITY;
      }
      most += of(world, sale, sale.sale().limits().inTotal());
    }
    return most;
  }

  /** In money, for so many packs. */
  static double of(World world, Deal.OnPacks deal, int packs) {
    Supplier supplier = world.supplier(deal.supplier());
    double most = 0;
    for (Pack pack : supplier.sheet().packs()) {
      if (deal.sale().covers(pack)) {
        most = Math.max(most, off(deal.sale().terms(), pack.price().toDouble()));
      }
    }
    double rounding = Math.pow(10, -world.decimals());
    double taxed = 1 + supplier.terms().tax().rate().fraction().doubleValue();
    return packs * (most + rounding) * taxed;
  }

  private static double off(Sale.Terms terms, double price) {
    if (terms instanceof Sale.PercentOff percent) {
      return price * percent.percent().fraction().doubleValue();
    }
    if (terms instanceof Sale.PriceOf of) {
      return Math.max(0, price - of.price().toDouble());
    }
    Sale.TakeAndPay group = (Sale.TakeAndPay) terms;
    return price * (group.take() - group.pay()) / group.take();
  }
}
