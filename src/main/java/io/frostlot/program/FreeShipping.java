package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.OrderTerms;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import io.frostlot.units.Money;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * From an order value on some charges are waived.
 *
 * <p>For threshold f: value on its base &gt;= from(f) on(f), on(f) &lt;= open. For each kind of
 * charge: waived &lt;= charge, waived &lt;= most x sum of on(f) over the thresholds that waive it.
 */
final class FreeShipping implements Rule {
  private final World world;

  FreeShipping(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "free-shipping";
  }

  @Override
  public String says() {
    return "An order of a high enough value is freed of some charges.";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  private static List<OrderTerms.FreeShipping> holding(Supplier supplier, Slot slot) {
    return supplier.terms().freeShipping().stream()
        .filter(free -> free.when().contains(slot.date(free.follows())))
        .toList();
  }

  @Override
  public void impose(Program program) {
    for (OrderDecisions order : program.decisions().orders().values()) {
      Map<OrderTerms.Charge, Linear> on = new EnumMap<>(OrderTerms.Charge.class);
      for (OrderTerms.FreeShipping free : holding(order.supplier(), order.slot())) {
        int at = order.supplier().terms().freeShipping().indexOf(free);
        Var reached = order.choice(id() + " " + at, program.model());
        program.model().atMost(id(), Linear.of(reached).plus(-1, order.open()), 0);
        Linear surplus = order.sums().value(free.threshold().base());
        program
            .model()
            .atLeast(id(), surplus.plus(-free.threshold().from().toDouble(), reached), 0);
        free.waives().forEach(kind -> on.computeIfAbsent(kind, k -> new Linear()).plus(1, reached));
      }
      on.forEach((kind, reached) -> waive(order, kind, reached, program));
    }
  }

  /**
   * What is waived splits into what an order with one box is charged, and further boxes; each is
   * bounded by its own share of "on", which keeps the linear relaxation close.
   */
  private void waive(
      OrderDecisions order, OrderTerms.Charge kind, Linear reached, Program program) {
    Model model = program.model();
    Linear charge = order.sums().charge(kind).copy();
    double[] oneBox = new double[model.columns().size()];
    oneBox[order.open().index()] = 1;
    oneBox[order.boxes().index()] = order.supplier().isPickUp() ? 0 : 1;
    double once = charge.at(oneBox);
    double further = Math.max(0, program.most(charge) - once);
    Var first = model.real(0, once);
    Var more = model.real(0, further);
    model.atMost(id(), Linear.of(first).plus(-once, reached), 0);
    model.atMost(id(), Linear.of(first).plus(-once, order.open()), 0);
    model.atMost(id(), Linear.of(more).plus(-further, reached), 0);
    model.atMost(id(), Linear.of(more).minus(charge).plus(once, order.open()), 0);
    Linear less = new Linear().plus(-1, first).plus(-1, more);
    order.sums().addCharge(kind, less);
    program.charge(this, less);
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Order order : plan.orders()) {
      Books.Ledger ledger = books.ledger(order.slot());
      Supplier supplier = world.supplier(order.slot().supplier());
      for (OrderTerms.FreeShipping free : holding(supplier, order.slot())) {
        if (ledger.value(free.threshold().base()).atLeast(free.threshold().from())) {
          for (OrderTerms.Charge kind : OrderTerms.Charge.values()) {
            if (free.waives().contains(kind)) {
              Money waived = ledger.charge(kind).negated();
              ledger.addCharge(kind, waived);
              books.cash(id(), order.slot(), waived);
            }
          }
        }
      }
    }
  }
}
