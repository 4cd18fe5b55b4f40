package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Sale;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Packs bought under a sale cost less; each pack under at most one, within the limits per order and
 * in total, in an order that takes it.
 *
 * <p>For row p, sale v and price step l: sum over v of under(p, v, l) &lt;= atStep(p, l); sum over
 * p, l &lt;= min(limit, useful) taken(v); taken(v) &lt;= open. Saving per pack under a percentage:
 * price(l) - price(l) x (1 - percent), rounded half-up; under a price: price(l) - that price; of
 * each full group of n packs of one row n - m are free. {@link SaleSteps} says which, where a line
 * has packs at several steps.
 */
final class Sales implements Rule {
  private final World world;

  Sales(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "sales";
  }

  @Override
  public String says() {
    return "Packs under a sale cost less, as many as the sale allows.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  private Money price(Pack pack, PriceBreak steps, int step) {
    Money price = step == 0 ? pack.price() : steps.steps().get(step - 1).price();
    return price.rounded(world.decimals());
  }

  private Money salePrice(Money price, Sale.Terms terms) {
    if (terms instanceof Sale.PercentOff off) {
      return price.times(off.percent().complement(), world.decimals());
    }
    return terms instanceof Sale.PriceOf of ? of.price().rounded(world.decimals()) : price;
  }

  @Override
  public void impose(Program program) {
    Map<String, Linear> inTotal = new LinkedHashMap<>();
    Map<String, Sale> sales = new LinkedHashMap<>();
    for (OrderDecisions order : program.decisions().orders().values()) {
      Map<OrderDecisions.PackDecision, SaleSteps> steps = new LinkedHashMap<>();
      for (Sale sale : order.supplier().salesOn(order.slot())) {
        Linear inOrder = new Linear();
        for (OrderDecisions.PackDecision pack : order.packs().values()) {
          if (sale.covers(pack.pack())) {
            SaleSteps ofRow =
                steps.computeIfAbsent(pack, k -> new SaleSteps(id(), pack, program.model()));
            inOrder.plus(offer(new Offer(order, pack, sale), ofRow, program));
          }
        }
        double most = Math.min(program.most(inOrder), sale.limits().perOrder());
        String name = order.supplier().id() + " " + sale.id();
        sales.put(name, sale);
        inTotal.computeIfAbsent(name, k -> new Linear()).plus(inOrder);
        Var taken = order.promotion(sale.id(), program.model());
        program.model().atMost(id(), inOrder.copy().plus(-most, taken), 0);
        program.model().atMost(id(), Linear.of(taken).plus(-1, order.open()), 0);
      }
      steps.values().forEach(SaleSteps::impose);
    }
    inTotal.forEach(
        (name, packs) -> {
          if (sales.get(name).limits().inTotal() != Pack.UNLIMITED) {
            program.model().atMost(id(), packs, sales.get(name).limits().inTotal());
          }
        });
  }

  private record Offer(OrderDecisions order, OrderDecisions.PackDecision pack, Sale sale) {}

  /** Packs of one row under one sale, all steps together. */
  private Linear offer(Offer offer, SaleSteps steps, Program program) {
    Linear packs = new Linear();
    OrderDecisions.PackDecision pack = offer.pack();
    Sale.Terms terms = offer.sale().terms();
    List<Var> under = steps.under();
    List<Linear> free =
        terms instanceof Sale.TakeAndPay group ? steps.free(under, group) : List.of();
    for (int step = 0; step < under.size(); step++) {
      packs.plus(1, under.get(step));
      Money price = price(pack.pack(), pack.priceBreak(), step);
      Money saving = price.minus(salePrice(price, terms));
      Linear change =
          free.isEmpty()
              ? new Linear().plus(-saving.toDouble(), under.get(step))
              : new Linear().plus(-price.toDouble(), free.get(step));
      offer.order().sums().markUnderSale(new Linear().plus(price.toDouble(), under.get(step)));
      offer.order().sums().addToSaleGoods(change);
      program.charge(this, change);
    }
    offer.order().underSale(pack.pack(), offer.sale().id(), packs);
    return packs;
  }

  @Override
  public void judge(Plan plan, Books books) {
    Map<String, Long> inTotal = new HashMap<>();
    for (Order order : plan.orders()) {
      Supplier supplier = world.supplier(order.slot().supplier());
      Map<String, Sale> sales = new HashMap<>();
      supplier.salesOn(order.slot()).forEach(sale -> sales.put(sale.id(), sale));
      Map<String, Long> inOrder = new HashMap<>();
      for (Order.Line line : order.lines()) {
        List<Sale> taken = new ArrayList<>();
        line.underSale()
            .forEach(
                (saleId, packs) -> {
                  Sale sale = sales.get(saleId);
                  if (sale == null
                      || !sale.covers(line.pack())
                      || !order.promotions().contains(saleId)) {
                    books.breach(
                        id(),
                        line.pack().id(),
                        "under " + saleId,
                        "a sale that holds and is taken");
                  } else {
                    inOrder.merge(saleId, (long) packs, Long::sum);
                    taken.add(sale);
                  }
                });
        charge(order, line, taken, books);
      }
      inOrder.forEach(
          (saleId, packs) -> {
            check(sales.get(saleId), packs, sales.get(saleId).limits().perOrder(), books);
            long total = inTotal.merge(supplier.id() + " " + saleId, packs, Long::sum);
            check(sales.get(saleId), total, sales.get(saleId).limits().inTotal(), books);
          });
    }
  }

  private void charge(Order order, Order.Line line, List<Sale> taken, Books books) {
    PriceBreak steps = world.supplier(order.slot().supplier()).breakOf(line.pack());
    int[] left = PriceBreaks.atStep(line.packs(), steps);
    Books.Ledger ledger = books.ledger(order.slot());
    for (Sale sale : taken) {
      int[] under = SaleSteps.first(line.underSale().get(sale.id()), left);
      int[] free =
          sale.terms() instanceof Sale.TakeAndPay group
              ? SaleSteps.free(under, group)
              : new int[under.length];
      for (int step = 0; step < under.length; step++) {
        left[step] -= under[step];
        Money price = price(line.pack(), steps, step);
        Money saving =
            price
                .minus(salePrice(price, sale.terms()))
                .times(under[step])
                .plus(price.times(free[step]));
        Money full = price.times(under[step]);
        ledger.addGoods(full.negated(), false);
        ledger.addGoods(full.minus(saving), true);
        books.cash(id(), order.slot(), saving.negated());
      }
    }
  }

  private void check(Sale sale, long packs, int limit, Books books) {
    if (packs > limit) {
      books.breach(id(), "sale " + sale.id(), packs + " packs", "at most " + limit);
    }
  }
}
