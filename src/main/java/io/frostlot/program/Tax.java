package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.OrderTerms;
import io.frostlot.units.Money;

/**
 * Tax on top of an order: rate x (goods - discount, and the charges where so), half-up to the minor
 * unit per order.
 */
final class Tax implements Rule {
  private final World world;

  Tax(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "tax";
  }

  @Override
  public String says() {
    return "Tax comes on top where a supplier's prices are without it.";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  @Override
  public void impose(Program program) {
    for (OrderDecisions order : program.decisions().orders().values()) {
      OrderTerms.Tax tax = order.supplier().terms().tax();
      if (!tax.rate().isZero()) {
        Linear base = order.sums().value(OrderTerms.Subtotal.AFTER_DISCOUNT);
        if (tax.onCharges()) {
          base.plus(order.sums().allCharges());
        }
        Linear amount = new Rounding(program, world.decimals()).percentOf(tax.rate(), base, id());
        order.sums().addTax(amount);
        program.charge(this, amount);
      }
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Order order : plan.orders()) {
      OrderTerms.Tax tax = world.supplier(order.slot().supplier()).terms().tax();
      Books.Ledger ledger = books.ledger(order.slot());
      Money base = ledger.value(OrderTerms.Subtotal.AFTER_DISCOUNT);
      if (tax.onCharges()) {
        base = base.plus(ledger.allCharges());
      }
      Money amount = base.times(tax.rate().fraction(), world.decimals());
      ledger.addTax(amount);
      books.cash(id(), order.slot(), amount);
    }
  }
}
