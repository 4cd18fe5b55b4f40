package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.DueSoon;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * To change what an earlier plan orders soon is reckoned at a charge: for each of its orders that
 * is due soon and does not stay as it was, pack by pack, and for each order that is due soon and
 * new.
 *
 * <p>For each earlier order o of n(p) packs of row p: kept(o) is 0 or 1, kept(o) &lt;= open(o), and
 * for each row n(p) kept(o) &lt;= count(o, p) &lt;= n(p) kept(o) + most(o, p) (1 - kept(o)). Money:
 * charge x (sum of 1 - kept(o) over the earlier orders + sum of open(o) over the others that are
 * due soon).
 *
 * <p>Where days are taken together an order stands for several, so nothing is charged then.
 */
final class ChangedDueSoon implements Rule {
  private final DueSoon dueSoon;

  ChangedDueSoon(World world) {
    dueSoon = world.dueSoon();
  }

  @Override
  public String id() {
    return "changed-due-soon";
  }

  @Override
  public String says() {
    return "An order due soon that is not as planned before is reckoned at "
        + dueSoon.charge()
        + ".";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  @Override
  public void impose(Program program) {
    Decisions decisions = program.decisions();
    if (dueSoon.isNone() || decisions.timeline().grain().takesDaysTogether()) {
      return;
    }
    double charge = dueSoon.charge().toDouble();
    for (DueSoon.Due due : dueSoon.orders()) {
      Linear changed = Linear.constant(charge);
      Optional.ofNullable(decisions.orders().get(due.slot()))
          .filter(order -> canBeKept(due, order))
          .ifPresent(order -> changed.plus(-charge, kept(due, order, program.model())));
      program.charge(this, changed);
    }
    decisions.orders().values().stream()
        .filter(order -> dueSoon.wouldAdd(order.slot()))
        .forEach(order -> program.charge(this, order.open(), dueSoon.charge()));
  }

  private static boolean canBeKept(DueSoon.Due due, OrderDecisions order) {
    Set<String> rows = new HashSet<>();
    order.packs().keySet().forEach(pack -> rows.add(pack.id()));
    return rows.containsAll(due.packs().keySet());
  }

  private Var kept(DueSoon.Due due, OrderDecisions order, Model model) {
    Var kept = order.choice(id(), model);
    model.atLeast(id(), Linear.of(order.open()).plus(-1, kept), 0);
    order
        .packs()
        .forEach(
            (pack, decision) -> {
              int packs = due.packs().getOrDefault(pack.id(), 0);
              double most = model.column(decision.count()).most();
              model.atLeast(id(), Linear.of(decision.count()).plus(-packs, kept), 0);
              model.atMost(id(), Linear.of(decision.count()).plus(most - packs, kept), most);
            });
    return kept;
  }

  @Override
  public void judge(Plan plan, Books books) {
    books.reckoned(id(), dueSoon.chargeOf(plan));
  }
}
