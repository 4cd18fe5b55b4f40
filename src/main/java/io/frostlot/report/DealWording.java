package io.frostlot.report;

import io.frostlot.plan.Deal;
import io.frostlot.plan.World;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Sale;
import io.frostlot.units.Money;
import io.frostlot.units.Period;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Says a deal in one sentence. */
record DealWording(World world, Wording wording) {

  String says(Deal deal) {
    String what =
        deal instanceof Deal.OnPacks packs
            ? onPacks(packs.sale())
            : deal instanceof Deal.OnOrders orders
                ? onOrders(orders.discount())
                : "no charge for "
                    + waived(((Deal.OnShipping) deal).waiver())
                    + " from "
                    + wording.money(((Deal.OnShipping) deal).waiver().threshold().from())
                    + " on";
    return "%s: %s, %s.".formatted(world.supplier(deal.supplier()).name(), what, when(deal.when()));
  }

  private static String waived(OrderTerms.FreeShipping waiver) {
    return waiver.waives().stream()
        .map(charge -> charge.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '))
        .sorted()
        .collect(Collectors.joining(", "));
  }

  private static String when(Period when) {
    return when.equals(Period.ALWAYS)
        ? "at any time"
        : "from " + Wording.date(when.from()) + " to " + Wording.date(when.to());
  }

  private String onPacks(Sale sale) {
    String items =
        sale.itemNames().isEmpty()
            ? "everything"
            : String.join(", ", new TreeSet<>(sale.itemNames()));
    String limits =
        limit(sale.limits().perOrder(), " an order") + limit(sale.limits().inTotal(), " in all");
    return terms(sale.terms()) + " " + items + limits + other(sale.combinable());
  }

  private static String limit(int packs, String of) {
    return packs == Pack.UNLIMITED ? "" : ", at most " + Wording.count(packs, "pack", "packs") + of;
  }

  private static String other(boolean combinable) {
    return combinable ? ", beside other promotions" : ", instead of other promotions";
  }

  private String terms(Sale.Terms terms) {
    if (terms instanceof Sale.PercentOff off) {
      return off.percent() + " off";
    }
    if (terms instanceof Sale.PriceOf of) {
      return wording.money(of.price()) + " a pack of";
    }
    Sale.TakeAndPay group = (Sale.TakeAndPay) terms;
    return group.take() + " packs for the price of " + group.pay() + " of";
  }

  private String onOrders(OrderTerms.Discount discount) {
    return discount.tiers().stream().map(this::tier).collect(Collectors.joining(", "))
        + other(discount.combinable());
  }

  private String tier(OrderTerms.Tier tier) {
    String amount = tier.amount().equals(Money.ZERO) ? "" : wording.money(tier.amount());
    String percent = tier.percent().isZero() ? "" : tier.percent().toString();
    return percent
        + (percent.isEmpty() || amount.isEmpty() ? "" : " and ")
        + amount
        + " off orders from "
        + wording.money(tier.from())
        + " on";
  }
}
