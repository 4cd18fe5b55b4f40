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

/** Every way in which the packs of one row can be bought, some of them under sales. */
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
    List<List<Long>> under = new ArrayList<>();
    sales.forEach(sale -> under.add(new ArrayList<>()));
    assign(0, 0, under, ways);
    return ways;
  }

  /** Gives each pack to no sale or to one; packs of one price in the order of the sales. */
  private void assign(int next, long regular, List<List<Long>> under, Set<Way> ways) {
    if (next == unitPrices.length) {
      long goods = regular;
      for (int s = 0; s < under.size(); s++) {
        goods += cost(sales.get(s), under.get(s));
      }
      ways.add(new Way(goods, regular, under.stream().map(List::size).toList()));
      return;
    }
    long price = unitPrices[next];
    assign(next + 1, regular + price, under, ways);
    for (int s = 0; s < under.size(); s++) {
      if (sales.get(s).covers(pack)) {
        List<Long> packs = under.get(s);
        packs.add(price);
        assign(next + 1, regular, under, ways);
        packs.remove(packs.size() - 1);
      }
    }
  }

  private long cost(Sale sale, List<Long> packs) {
    long full = packs.stream().mapToLong(p -> p).sum();
    if (sale.terms() instanceof Sale.PercentOff off) {
      Percent left = new Percent(BigDecimal.valueOf(100).subtract(off.percent().value()));
      return packs.stream().mapToLong(price -> Amounts.share(price, left, decimals)).sum();
    }
    if (sale.terms() instanceof Sale.PriceOf fixed) {
      return packs.size() * Amounts.rounded(Amounts.of(fixed.price()), decimals);
    }
    Sale.TakeAndPay group = (Sale.TakeAndPay) sale.terms();
    int free = packs.size() / group.take() * (group.take() - group.pay());
    return full
        - packs.stream().sorted((a, b) -> Long.compare(b, a)).limit(free).mapToLong(p -> p).sum();
  }
}
