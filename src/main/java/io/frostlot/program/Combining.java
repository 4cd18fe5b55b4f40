package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Supplier;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A promotion that may not be combined is the only one of its order: taken(a) + taken(b) &lt;= open
 * for each other promotion b.
 */
final class Combining implements Rule {
  private final World world;

  Combining(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "combining";
  }

  @Override
  public String says() {
    return "Promotions that may not be combined are not taken together.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public void impose(Program program) {
    for (OrderDecisions order : program.decisions().orders().values()) {
      List<Supplier.Promotion> all = order.supplier().promotionsOn(order.slot());
      for (int a = 0; a < all.size(); a++) {
        for (int b = a + 1; b < all.size(); b++) {
          if (!all.get(a).combinable() || !all.get(b).combinable()) {
            Linear both = Linear.of(order.promotion(all.get(a).id(), program.model()));
            both.plus(1, order.promotion(all.get(b).id(), program.model()));
            program.model().atMost(id(), both.plus(-1, order.open()), 0);
          }
        }
      }
    }
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Order order : plan.orders()) {
      String where = "order of " + order.slot().ordered();
      List<Supplier.Promotion> taken =
          world.supplier(order.slot().supplier()).promotionsOn(order.slot()).stream()
              .filter(promotion -> order.promotions().contains(promotion.id()))
              .toList();
      String names = taken.stream().map(Supplier.Promotion::id).collect(Collectors.joining(", "));
      if (taken.size() != order.promotions().size()) {
        books.breach(id(), where, order.promotions(), "promotions that hold then");
      }
      if (taken.size() > 1 && taken.stream().anyMatch(promotion -> !promotion.combinable())) {
        books.breach(id(), where, names, "one that may not be combined stands alone");
      }
    }
  }
}
