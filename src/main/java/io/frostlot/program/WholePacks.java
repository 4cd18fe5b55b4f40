package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.BoxFit;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Pack;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A supplier that never cuts a pack across boxes fills as many boxes as whole packs need, by exact
 * packing.
 *
 * <p>In the program: for each limit W and k = 1 .. 4, sum over rows of u(size / W) x count &lt;=
 * boxes, where u(x) = x if (k+1) x is whole, else floor((k+1) x) / k: a dual feasible function (S.
 * P. Fekete, J. Schepers, Mathematical Programming 91, 2001, from memory). What these miss is added
 * by {@link #cut} once it is met.
 */
final class WholePacks implements Rule {
  private static final int FUNCTIONS = 4;
  private final World world;

  WholePacks(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return "whole-packs";
  }

  @Override
  public String says() {
    return "A pack is never cut across boxes where the supplier says so.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  private static boolean applies(Boxing boxing) {
    return boxing.way() == Boxing.Way.WHOLE_PACKS;
  }

  @Override
  public void impose(Program program) {
    for (OrderDecisions order : program.decisions().orders().values()) {
      if (applies(order.supplier().boxing()) && !order.supplier().isPickUp()) {
        for (int k = 1; k <= FUNCTIONS; k++) {
          for (int dimension = 0; dimension < 3; dimension++) {
            imposeFunction(order, k, dimension, program);
          }
        }
      }
    }
  }

  private void imposeFunction(OrderDecisions order, int k, int dimension, Program program) {
    Linear filled = new Linear().plus(-1, order.boxes());
    boolean gains = false;
    for (OrderDecisions.PackDecision pack : order.packs().values()) {
      long size = BoxFit.sizes(pack.pack())[dimension];
      long limit = BoxFit.sizes(order.supplier().boxing().limits())[dimension];
      double share = (double) size / limit;
      double counted =
          size * (k + 1) % limit == 0 ? share : Math.floorDiv(size * (k + 1), limit) / (double) k;
      gains |= counted > share;
      filled.plus(counted, pack.count());
    }
    if (gains) {
      program.model().atMost(id(), filled, 0);
    }
  }

  /**
   * Adds what a solution shows to be missing: packs q that need n boxes, however they are put, need
   * them in every order of the supplier that holds at least q.
   *
   * <p>With has(p) = 1 where count(p) &gt;= q(p): boxes &gt;= n - n x sum over p of (1 - has(p)).
   * The packs are first thinned out as long as they still need n boxes.
   *
   * @return whether anything was missing
   */
  boolean cut(Program program, double[] point) {
    boolean missing = false;
    for (OrderDecisions order : List.copyOf(program.decisions().orders().values())) {
      if (!applies(order.supplier().boxing()) || order.supplier().isPickUp()) {
        continue;
      }
      Boxing.Limits limits = order.supplier().boxing().limits();
      Map<Pack, Integer> counts = order.packs(point);
      int needed = BoxFit.pack(counts, limits).size();
      if (needed > Math.round(point[order.boxes().index()])) {
        missing = true;
        thin(counts, needed, limits);
        program.decisions().orders().values().stream()
            .filter(other -> other.slot().supplier().equals(order.slot().supplier()))
            .forEach(other -> require(other, counts, needed, program));
      }
    }
    return missing;
  }

  /** Can every order of a solution be sent, now that its packs are packed exactly? */
  boolean withinMostBoxes(Program program, double[] point) {
    return program.decisions().orders().values().stream()
        .filter(order -> applies(order.supplier().boxing()) && !order.supplier().isPickUp())
        .allMatch(
            order -> {
              Boxing boxing = order.supplier().boxing();
              return BoxFit.pack(order.packs(point), boxing.limits()).size() <= boxing.mostBoxes();
            });
  }

  private static void thin(Map<Pack, Integer> counts, int needed, Boxing.Limits limits) {
    for (Pack pack : new ArrayList<>(counts.keySet())) {
      while (counts.containsKey(pack)) {
        Map<Pack, Integer> fewer = new LinkedHashMap<>(counts);
        fewer.computeIfPresent(pack, (p, count) -> count == 1 ? null : count - 1);
        if (fewer.isEmpty() || BoxFit.pack(fewer, limits).size() < needed) {
          break;
        }
        counts.clear();
        counts.putAll(fewer);
      }
    }
  }

  private void require(
      OrderDecisions order, Map<Pack, Integer> counts, int needed, Program program) {
    if (!order.packs().keySet().containsAll(counts.keySet())) {
      return;
    }
    Linear boxes = Linear.of(order.boxes()).plus((double) needed * (counts.size() - 1));
    counts.forEach(
        (pack, packs) -> {
          Var count = order.packs().get(pack).count();
          double most = program.model().column(count).most();
          Var has = program.model().yesNo();
          program
              .model()
              .atMost(
                  id(), Linear.of(count).plus(-Math.max(0, most - packs + 1), has), packs - 1.0);
          boxes.plus(-needed, has);
        });
    program.model().atLeast(id(), boxes, 0);
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Order order : plan.orders()) {
      Boxing boxing = world.supplier(order.slot().supplier()).boxing();
      if (applies(boxing) && !world.supplier(order.slot().supplier()).isPickUp()) {
        judge(order, boxing, books);
      }
    }
  }

  private void judge(Order order, Boxing boxing, Books books) {
    String where = "order of " + order.slot().ordered();
    Map<Pack, Integer> counts = order.packs();
    for (Pack pack : counts.keySet()) {
      if (!BoxFit.fits(pack, boxing.limits())) {
        books.breach(id(), where, pack.id(), "a pack that fits into a box");
        return;
      }
    }
    int least = BoxFit.pack(counts, boxing.limits()).size();
    if (order.boxes().count() != least || least > boxing.mostBoxes()) {
      books.breach(
          id(), where, order.boxes().count() + " boxes", least + ", at most " + boxing.mostBoxes());
    }
    for (List<Order.Content> box : order.boxes().contents()) {
      long[] left = BoxFit.sizes(boxing.limits());
      for (Order.Content content : box) {
        counts.merge(content.pack(), -content.packs(), Integer::sum);
        for (int d = 0; d < left.length; d++) {
          left[d] -= content.packs() * BoxFit.sizes(content.pack())[d];
        }
      }
      if (left[0] < 0 || left[1] < 0 || left[2] < 0) {
        books.breach(id(), where, box, "what one box holds");
      }
    }
    boolean allIn = counts.values().stream().allMatch(count -> count == 0);
    if (!allIn || order.boxes().contents().size() != order.boxes().count()) {
      books.breach(
          id(), where, order.boxes().contents().size() + " boxes listed", "every pack once");
    }
  }
}
