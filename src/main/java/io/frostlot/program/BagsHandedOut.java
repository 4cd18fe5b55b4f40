package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Cutting;
import io.frostlot.plan.Division;
import io.frostlot.plan.Handed;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A bag of a joint order goes whole to one keeper, or, where it may be cut, in portions of at least
 * n pieces to several; what nobody wants has an owner too.
 *
 * <p>For each joint order, item and keeper k: pieces(k) = sum over rows p of bag(p) whole(p, k) +
 * sum over cut bags b of portion(b, k); count(p) = sum of whole(p, k) + bags cut; n in(b, k) &lt;=
 * portion(b, k) &lt;= (bag - n) in(b, k); the portions of a cut bag sum to the bag. At most 2 (K -
 * 1) bags of a row are cut among K keepers. No row where every bag may be cut into single pieces.
 */
final class BagsHandedOut implements Rule {
  private final World world;
  private final Cutting cutting;

  BagsHandedOut(World world) {
    this.world = world;
    cutting = world.joint().cutting();
  }

  @Override
  public String id() {
    return "bags-handed-out";
  }

  @Override
  public String says() {
    return "A bag of a joint order goes whole to one keeper, or in portions that are large enough.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public void impose(Program program) {
    if (!program.decisions().timeline().isExact()) {
      return;
    }
    for (OrderDecisions order : program.decisions().orders().values()) {
      if (world.joint().isJoint(order.slot())) {
        order.packs().keySet().stream()
            .map(Pack::item)
            .distinct()
            .forEach(item -> impose(order, item, program));
      }
    }
  }

  private void impose(OrderDecisions order, Item item, Program program) {
    List<OrderDecisions.PackDecision> rows =
        order.packs().values().stream().filter(row -> row.pack().item().equals(item)).toList();
    Map<String, Linear> unassigned = got(order, item, program);
    if (unassigned.size() < 2 || rows.stream().allMatch(row -> cutting.least(row.pack()) == 1)) {
      return;
    }
    for (OrderDecisions.PackDecision row : rows) {
      double most = program.model().column(row.count()).most();
      Linear bags = Linear.of(row.count());
      for (Linear left : unassigned.values()) {
        Var whole = program.model().whole(0, most);
        left.plus(-row.pack().pieces(), whole);
        bags.plus(-1, whole);
      }
      if (cutting.mayCut(row.pack())) {
        int cuts = (int) Math.min(most, Division.mostCuts(world.keepers().size()));
        for (int bag = 0; bag < cuts; bag++) {
          bags.plus(-1, cut(row.pack(), unassigned, program.model()));
        }
      }
      program.model().equal(id(), bags, 0);
    }
    unassigned.values().forEach(left -> program.model().equal(id(), left, 0));
  }

  /** Pieces that each keeper gets of an order. */
  private Map<String, Linear> got(OrderDecisions order, Item item, Program program) {
    Lot.Ordered origin = new Lot.Ordered(order.slot());
    Map<String, Linear> got = new LinkedHashMap<>();
    for (String keeper : world.keepers()) {
      for (Flow flow : program.decisions().flowsOf(keeper, item)) {
        flow.parts().stream()
            .filter(part -> part.lot().origin().equals(origin))
            .forEach(part -> got.computeIfAbsent(keeper, k -> new Linear()).plus(part.pieces()));
      }
    }
    return got;
  }

  /** Returns whether one more bag is cut. */
  private Var cut(Pack pack, Map<String, Linear> unassigned, Model model) {
    Var isCut = model.yesNo();
    int least = cutting.least(pack);
    Linear whole = new Linear().plus(-pack.pieces(), isCut);
    for (Linear left : unassigned.values()) {
      Var in = model.yesNo();
      Var portion = model.follows(0, pack.pieces() - least);
      model.atMost(id(), Linear.of(portion).plus(-(pack.pieces() - least), in), 0);
      model.atLeast(id(), Linear.of(portion).plus(-least, in), 0);
      whole.plus(1, portion);
      left.plus(-1, portion);
    }
    model.equal(id(), whole, 0);
    return isCut;
  }

  @Override
  public void judge(Plan plan, Books books) {
    for (Handed handed : world.keepers().size() < 2 ? List.<Handed>of() : Handed.of(world, plan)) {
      if (handed.division(cutting).isEmpty()) {
        books.breach(
            id(),
            handed.order().slot().supplier() + " on " + handed.order().slot().ordered(),
            handed.item().name() + " divided " + handed.pieces(),
            "whole bags, or portions that are large enough");
      }
    }
  }
}
