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
 * <p>For discount d and tier t: sum over t of on(t) = taken(d). The value on its base is split into
 * what each tier counts and what none counts: value = counted + sum over t of counted(t), from(t)
 * on(t) &lt;= counted(t) &lt;= (from(t+1) less a minor unit) on(t), counted &lt;= most (open -
 * taken), taken &lt;= open; this is the convex hull of the choice. Discount = percent(t) x
 * counted(t), half-up to the minor unit, plus amount(t), at most the goods.
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
        sum.plus(discount(order, discount, program));
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

  /** What one discount takes off; zero where it is not taken. */
  private Linear discount(OrderDecisions order, OrderTerms.Discount discount, Program program) {
    Model model = program.model();
    Linear value = order.sums().value(discount.base());
    double most = Math.max(0, program.most(value));
    Var taken = order.promotion(discount.id(), model);
    Linear on = new Linear().plus(-1, taken);
    Var uncounted = model.real(0, most);
    Linear rest = value.plus(-1, uncounted);
    model.atMost(id(), Linear.of(taken).plus(-1, order.open()), 0);
    model.atMost(id(), Linear.of(uncounted).plus(most, taken).plus(-most, order.open()), 0);
    Linear off = new Linear();
    List<OrderTerms.Tier> tiers = discount.tiers();
    for (int t = 0; t < tiers.size(); t++) {
      OrderTerms.Tier tier = tiers.get(t);
      double end = t + 1 < tiers.size() ? lastBelow(tiers.get(t + 1).from()) : most;
      Var reached = order.choice(discount.id() + " tier " + t, model);
      Var counted = model.real(0, most);
      on.plus(1, reached);
      rest.plus(-1, counted);
      model.atMost(id(), Linear.of(counted).plus(-Math.min(end, most), reached), 0);
      model.atLeast(id(), Linear.of(counted).plus(-tier.from().toDouble(), reached), 0);
      off.plus(tier.amount().toDouble(), reached);
      if (!tier.percent().isZero()) {
        Rounding rounding = new Rounding(program, world.decimals());
        off.plus(rounding.percentOf(tier.percent(), Linear.of(counted), id()));
      }
    }
    model.equal(id(), on, 0);
    model.equal(id(), rest, 0);
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
