package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.units.Money;

/**
 * Each pack costs its regular price, rounded to the minor unit; breaks and sales change it later.
 */
final class PackPrice implements Rule {
  private final World world;

  PackPrice(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "pack-price";
  }

  @Override
  public String says() {
    return "Each pack costs its price on the sheet.";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  private Money price(Pack pack) {
    return pack.price().rounded(world.decimals());
  }

  @Override
  public void impose(Program program) {
    for (OrderDecisions order : program.decisions().orders().values()) {
      for (OrderDecisions.PackDecision pack : order.packs().values()) {
        Linear goods = new Linear().plus(price(pack.pack()).toDouble(), pack.count());
        order.sums().addGoods(goods);
        program.charge(this, goods);
      }
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Order order : plan.orders()) {
      for (Order.Line line : order.lines()) {
        Money goods = price(line.pack()).times(line.packs());
        books.ledger(order.slot()).addGoods(goods, false);
        books.cash(id(), order.slot(), goods);
      }
    }
  }
}
