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
 * p, l &lt;= min(limit, useful) taken(v). Saving per pack under a percentage: price(l) - price(l) x
 * (1 - percent), rounded half-up; under a price: price(l) - that price; of each full group of n
 * packs of one row and price step n - m are free. Where a line has packs at several steps, those
 * under a sale are the ones that make the line cost least.
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
      Map<Var, Linear> atStep = new LinkedHashMap<>();
      for (Sale sale : order.supplier().salesOn(order.slot())) {
        Linear inOrder = new Linear();
        for (OrderDecisions.PackDecision pack : order.packs().values()) {
          if (sale.covers(pack.pack())) {
            inOrder.plus(offer(new Offer(order, pack, sale), atStep, program));
          }
        }
        double most = Math.min(program.most(inOrder), sale.limits().perOrder());
        String name = order.supplier().id() + " " + sale.id();
        sales.put(name, sale);
        inTotal.computeIfAbsent(name, k -> new Linear()).plus(inOrder);
        program
            .model()
            .atMost(
                id(), inOrder.copy().plus(-most, order.promotion(sale.id(), program.model())), 0);
      }
      atStep.forEach((packs, under) -> program.model().atMost(id(), under.plus(-1, packs), 0));
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
  private Linear offer(Offer offer, Map<Var, Linear> atStep, Program program) {
    Linear packs = new Linear();
    OrderDecisions.PackDecision pack = offer.pack();
    double most = program.model().column(pack.count()).most();
    for (int step = 0; step < pack.atStep().size(); step++) {
      Var under = program.model().whole(0, most);
      packs.plus(1, under);
      atStep.computeIfAbsent(pack.atStep().get(step), k -> new Linear()).plus(1, under);
      Money price = price(pack.pack(), pack.priceBreak(), step);
      Money saving = price.minus(salePrice(price, offer.sale().terms()));
      Linear change = new Linear().plus(-saving.toDouble(), under);
      if (offer.sale().terms() instanceof Sale.TakeAndPay group) {
        Var groups = program.model().whole(0, Math.floor(most / group.take()));
        Linear open = Linear.of(under).plus(-group.take(), groups);
        program.model().row(id(), 0, open, group.take() - 1.0);
        change = new Linear().plus(-price.times(group.take() - group.pay()).toDouble(), groups);
      }
      offer.order().sums().markUnderSale(new Linear().plus(price.toDouble(), under));
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
    int[] atStep = PriceBreaks.atStep(line.packs(), steps);
    int[] under = taken.stream().mapToInt(sale -> line.underSale().get(sale.id())).toArray();
    int[][] split =
        SaleSplit.cheapest(
            atStep,
            under,
            (sale, step, packs) ->
                saving(price(line.pack(), steps, step), taken.get(sale).terms(), packs).toDouble());
    Books.Ledger ledger = books.ledger(order.slot());
    for (int sale = 0; sale < under.length; sale++) {
      for (int step = 0; step < atStep.length; step++) {
        int packs = split[sale][step];
        Money price = price(line.pack(), steps, step);
        Money saving = saving(price, taken.get(sale).terms(), packs);
        Money full = price.times(packs);
        ledger.addGoods(full.negated(), false);
        ledger.addGoods(full.minus(saving), true);
        books.cash(id(), order.slot(), saving.negated());
      }
    }
  }

  private Money saving(Money price, Sale.Terms terms, int packs) {
    if (terms instanceof Sale.TakeAndPay group) {
      return price.times((long) (packs / group.take()) * (group.take() - group.pay()));
    }
    return price.minus(salePrice(price, terms)).times(packs);
  }

  private void check(Sale sale, long packs, int limit, Books books) {
    if (packs > limit) {
      books.breach(id(), "sale " + sale.id(), packs + " packs", "at most " + limit);
    }
  }
}
