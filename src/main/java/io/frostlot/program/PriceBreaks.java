package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.PriceBreak;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.util.List;

/**
 * From a number of packs of one row on, a pack costs less: all packs of the order (all units), or
 * the packs from that number on (incremental).
 *
 * <p>With l the steps, from(0) = 1: sum over l of atStep(l) = count. All units: from(l) on(l) &lt;=
 * atStep(l) &lt;= most on(l), sum of on(l) &lt;= open. Incremental: atStep(l) &lt;= (from(l+1) -
 * from(l)) open, on(l) &lt;= open, atStep(l) &gt;= (from(l+1) - from(l)) on(l+1), atStep(l+1) &lt;=
 * most on(l+1). Charge: (price(l) - regular price) x atStep(l), prices rounded to the minor unit.
 */
final class PriceBreaks implements Rule {
  private final World world;

  PriceBreaks(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "price-breaks";
  }

  @Override
  public String says() {
    return "Many packs of one row in one order cost less each.";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  private Money saving(OrderDecisions.PackDecision pack, int step) {
    Money regular = pack.pack().price().rounded(world.decimals());
    return pack.priceBreak().steps().get(step - 1).price().rounded(world.decimals()).minus(regular);
  }

  @Override
  public void impose(Program program) {
    for (OrderDecisions order : program.decisions().orders().values()) {
      for (OrderDecisions.PackDecision pack : order.packs().values()) {
        if (pack.atStep().size() > 1) {
          split(order, pack, program);
          for (int step = 1; step < pack.atStep().size(); step++) {
            Linear change =
                new Linear().plus(saving(pack, step).toDouble(), pack.atStep().get(step));
            order.sums().addGoods(change);
            program.charge(this, change);
          }
        }
      }
    }
  }

  private void split(OrderDecisions order, OrderDecisions.PackDecision pack, Program program) {
    Model model = program.model();
    List<PriceBreak.Step> steps = pack.priceBreak().steps();
    double most = model.column(pack.count()).most();
    Linear sum = new Linear().plus(-1, pack.count());
    pack.atStep().forEach(part -> sum.plus(1, part));
    model.equal(id(), sum, 0);
    boolean allUnits = pack.priceBreak().counting() == PriceBreak.Counting.ALL_UNITS;
    Linear one = new Linear();
    Var regular = model.yesNo();
    if (allUnits) {
      one.plus(1, regular);
      model.atMost(
          id(),
          Linear.of(pack.atStep().get(0)).plus(-(steps.get(0).fromPacks() - 1.0), regular),
          0);
    } else {
      model.atMost(
          id(),
          Linear.of(pack.atStep().get(0)).plus(-(steps.get(0).fromPacks() - 1.0), order.open()),
          0);
    }
    for (int l = 1; l < pack.atStep().size(); l++) {
      int from = steps.get(l - 1).fromPacks();
      double end = l < steps.size() ? steps.get(l).fromPacks() - 1.0 : Math.max(most, from);
      Var on = order.stepReached(pack.pack().id() + " step " + l, model);
      Var part = pack.atStep().get(l);
      if (allUnits) {
        one.plus(1, on);
        model.atMost(id(), Linear.of(part).plus(-end, on), 0);
        model.atLeast(id(), Linear.of(part).plus(-from, on), 0);
      } else {
        model.atMost(id(), Linear.of(on).plus(-1, order.open()), 0);
        int before = l == 1 ? 1 : steps.get(l - 2).fromPacks();
        model.atMost(id(), Linear.of(part).plus(-(end - from + 1), on), 0);
        model.atLeast(id(), Linear.of(pack.atStep().get(l - 1)).plus(before - from, on), 0);
      }
    }
    if (allUnits) {
      model.atMost(id(), one.plus(-1, order.open()), 0);
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Order order : plan.orders()) {
      Supplier supplier = world.supplier(order.slot().supplier());
      for (Order.Line line : order.lines()) {
        for (PriceBreak steps : supplier.sheet().breaks()) {
          if (steps.packId().equals(line.pack().id())) {
            Money change = change(line, steps);
            books.ledger(order.slot()).addGoods(change, false);
            books.cash(id(), order.slot(), change);
          }
        }
      }
    }
  }

  private Money change(Order.Line line, PriceBreak priceBreak) {
    Money regular = line.pack().price().rounded(world.decimals());
    int[] atStep = atStep(line.packs(), priceBreak);
    Money sum = Money.ZERO;
    for (int l = 1; l < atStep.length; l++) {
      Money price = priceBreak.steps().get(l - 1).price().rounded(world.decimals());
      sum = sum.plus(price.minus(regular).times(atStep[l]));
    }
    return sum;
  }

  /** Packs at the regular price, then at each step. */
  static int[] atStep(int packs, PriceBreak priceBreak) {
    List<PriceBreak.Step> steps = priceBreak.steps();
    int[] atStep = new int[steps.size() + 1];
    int reached = 0;
    while (reached < steps.size() && steps.get(reached).fromPacks() <= packs) {
      reached++;
    }
    if (priceBreak.counting() == PriceBreak.Counting.ALL_UNITS) {
      atStep[reached] = packs;
      return atStep;
    }
    int left = packs;
    for (int l = reached; l >= 1; l--) {
      atStep[l] = left - steps.get(l - 1).fromPacks() + 1;
      left -= atStep[l];
    }
    atStep[0] = left;
    return atStep;
  }
}
