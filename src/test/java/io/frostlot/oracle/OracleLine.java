package io.frostlot.oracle;

import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Percent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Every way in which the packs of one row can be bought, some of them under sales: those of the
 * first sale are the dearest, those of the next the dearest of the rest; free are the cheapest of a
 * sale.
 */
final class OracleLine {
  private final Pack pack;
  private final List<Sale> sales;
  private final int decimals;
  private final long[] unitPrices;

  /**
   * One way.
   *
   * @param goods in millionths
   * @param regular the part of it bought under no sale
   * @param underSale packs by sale
   */
  record Way(long goods, long regular, List<Integer> underSale) {}

  OracleLine(Supplier supplier, Pack pack, int packs, List<Sale> sales, int decimals) {
    this.pack = pack;
    this.sales = sales;
    this.decimals = decimals;
    unitPrices = unitPrices(supplier, packs);
  }

  /** The price of the first, second ... pack after the break. */
  private long[] unitPrices(Supplier supplier, int packs) {
    long[] prices = new long[packs];
    Arrays.fill(prices, Amounts.rounded(Amounts.of(pack.price()), decimals));
    for (PriceBreak steps : supplier.sheet().breaks()) {
      if (steps.packId().equals(pack.id())) {
        for (PriceBreak.Step step : steps.steps()) {
          boolean all = steps.counting() == PriceBreak.Counting.ALL_UNITS;
          if (packs >= step.fromPacks()) {
            long price = Amounts.rounded(Amounts.of(step.price()), decimals);
            Arrays.fill(prices, all ? 0 : step.fromPacks() - 1, packs, price);
          }
        }
      }
    }
    return prices;
  }

  Set<Way> ways() {
    Set<Way> ways = new LinkedHashSet<>();
    assign(0, List.of(), ways);
    return ways;
  }

  /** Gives any number of the packs that are left to the next sale. */
  private void assign(int given, List<List<Long>> under, Set<Way> ways) {
    if (under.size() == sales.size()) {
      long regular = sum(prices(given, unitPrices.length));
      long goods = regular;
      for (int s = 0; s < under.size(); s++) {
        goods += cost(sales.get(s), under.get(s));
      }
      ways.add(new Way(goods, regular, under.stream().map(List::size).toList()));
      return;
    }
    int most = sales.get(under.size()).covers(pack) ? unitPrices.length : given;
    for (int next = given; next <= most; next++) {
      List<List<Long>> more = new ArrayList<>(under);
      more.add(prices(given, next));
      assign(next, more, ways);
    }
  }

  /** Prices fall from pack to pack, or stay. */
  private List<Long> prices(int from, int before) {
    return Arrays.stream(unitPrices, from, before).boxed().toList();
  }

  private static long sum(List<Long> prices) {
    return prices.stream().mapToLong(p -> p).sum();
  }

  private long cost(Sale sale, List<Long> packs) {
    if (sale.terms() instanceof Sale.PercentOff off) {
      Percent left = new Percent(BigDecimal.valueOf(100).subtract(off.percent().value()));
      return packs.stream().mapToLong(price -> Amounts.share(price, left, decimals)).sum();
    }
    if (sale.terms() instanceof Sale.PriceOf fixed) {
      return packs.size() * Amounts.rounded(Amounts.of(fixed.price()), decimals);
    }
    Sale.TakeAndPay group = (Sale.TakeAndPay) sale.terms();
    int paid = packs.size() - packs.size() / group.take() * (group.take() - group.pay());
    return sum(packs.subList(0, paid));
  }
}
