package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.OrderTerms;
import io.frostlot.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * A discount on the value of an order: of the tiers reached the highest counts.
 *
 * <p>For discount d and tier t: sum over t of on(t) = taken(d); value &gt;= from(t) on(t); value
 * &lt; from(t+1) where on(t). Discount = percent(t) x value on its base, half-up to the minor unit,
 * plus amount(t), at most the goods.
 */
final class OrderDiscounts implements Rule {
  private static final int EXACT_DECIMALS = 10;
  private final World world;

  OrderDiscounts(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "order-discounts";
  }

  @Override
  public String says() {
    return "An order of a high enough value is discounted.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public void impose(Program program) {
    for (OrderDecisions order : program.decisions().orders().values()) {
      Linear sum = new Linear();
      for (OrderTerms.Discount discount : order.supplier().discountsOn(order.slot())) {
        Linear on = new Linear().plus(-1, order.promotion(discount.id(), program.model()));
        for (int t = 0; t < discount.tiers().size(); t++) {
          Var reached = program.model().yesNo();
          on.plus(1, reached);
          sum.plus(tier(order, new Step(discount, t, reached), program));
        }
        program.model().equal(id(), on, 0);
      }
      if (!sum.hasNoTerms()) {
        Linear off = mayPassGoods(order) ? capped(order, sum, program) : sum;
        order.sums().addDiscount(off);
        program.charge(this, new Linear().minus(off));
      }
    }
  }

  /** Could the discounts be more than the goods? Not for one whose tiers are below their values. */
  private static boolean mayPassGoods(OrderDecisions order) {
    List<OrderTerms.Discount> discounts = order.supplier().discountsOn(order.slot());
    return discounts.size() > 1
        || discounts.stream()
            .flatMap(discount -> discount.tiers().stream())
            .anyMatch(
                tier -> {
                  Money full = tier.from().times(tier.percent().complement(), EXACT_DECIMALS);
                  return tier.amount().compareTo(full) > 0;
                });
  }

  /** The lesser of the sum and the goods, exactly: later steps of the ladder look at it. */
  private Linear capped(OrderDecisions order, Linear sum, Program program) {
    Model model = program.model();
    Linear goods = order.sums().value(OrderTerms.Subtotal.GOODS);
    double mostOff = Math.max(0, program.most(sum));
    double mostGoods = Math.max(0, program.most(goods));
    Var excess = model.real(0, mostOff);
    Var atGoods = model.yesNo();
    Linear off = sum.copy().plus(-1, excess);
    model.atMost(id(), off.copy().minus(goods), 0);
    model.atMost(id(), Linear.of(excess).plus(-mostOff, atGoods), 0);
    model.atLeast(id(), off.copy().minus(goods).plus(-mostGoods, atGoods), -mostGoods);
    return off;
  }

  private record Step(OrderTerms.Discount discount, int tier, Var reached) {
    OrderTerms.Tier terms() {
      return discount.tiers().get(tier);
    }
  }

  /** What one tier takes off; zero where it is not the one that counts. */
  private Linear tier(OrderDecisions order, Step step, Program program) {
    Linear value = order.sums().value(step.discount().base());
    double most = Math.max(0, program.most(value));
    Model model = program.model();
    model.atLeast(id(), value.copy().plus(-step.terms().from().toDouble(), step.reached()), 0);
    List<OrderTerms.Tier> tiers = step.discount().tiers();
    if (step.tier() + 1 < tiers.size()) {
      double below = lastBelow(tiers.get(step.tier() + 1).from());
      model.atMost(
          id(),
          value.copy().plus(Math.max(0, most - below), step.reached()),
          Math.max(most, below));
    }
    Linear off = new Linear().plus(step.terms().amount().toDouble(), step.reached());
    if (!step.terms().percent().isZero()) {
      Var counted = model.real(0, most);
      model.atMost(id(), Linear.of(counted).plus(-most, step.reached()), 0);
      model.atMost(id(), Linear.of(counted).minus(value), 0);
      model.atLeast(id(), Linear.of(counted).minus(value).plus(-most, step.reached()), -most);
      off.plus(
          new Rounding(program, world.decimals())
              .percentOf(step.terms().percent(), Linear.of(counted), id()));
    }
    return off;
  }

  /** Values are in whole minor units. */
  private double lastBelow(Money from) {
    return from.amount()
        .setScale(world.decimals(), RoundingMode.CEILING)
        .subtract(BigDecimal.ONE.movePointLeft(world.decimals()))
        .doubleValue();
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Order order : plan.orders()) {
      Books.Ledger ledger = books.ledger(order.slot());
      Money sum = Money.ZERO;
      for (OrderTerms.Discount discount :
          world.supplier(order.slot().supplier()).discountsOn(order.slot())) {
        if (order.promotions().contains(discount.id())) {
          Money value = ledger.value(discount.base());
          if (!value.atLeast(discount.tiers().get(0).from())) {
            books.breach(id(), discount.id(), value, "at least " + discount.tiers().get(0).from());
          }
          sum = sum.plus(off(discount, value));
        }
      }
      Money goods = ledger.value(OrderTerms.Subtotal.GOODS);
      Money capped = sum.compareTo(goods) > 0 ? goods : sum;
      ledger.addDiscount(capped);
      books.cash(id(), order.slot(), capped.negated());
    }
  }

  private Money off(OrderTerms.Discount discount, Money value) {
    Money off = Money.ZERO;
    for (OrderTerms.Tier tier : discount.tiers()) {
      if (value.atLeast(tier.from())) {
        off = value.times(tier.percent().fraction(), world.decimals()).plus(tier.amount());
      }
    }
    return off;
  }
}
