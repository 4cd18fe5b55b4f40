package io.frostlot.program;

import io.frostlot.plan.Joint;
import io.frostlot.plan.World;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A strengthening of relaxations in which all keepers eat from one freezer: what follows of {@link
 * BagsHandedOut} for all orders together. Holds for every plan of the joint world.
 *
 * <p>For each keeper k and item i: eaten(k, i) &lt;= what k has in hand, under way and fetches
 * alone + sum over rows p of the joint orders of pieces(p) bags(p, k), whole where a bag may not be
 * cut; for each row p: sum over k of bags(p, k) &lt;= sum over joint orders of count(p).
 */
final class BagsInAll {
  private static final String ID = "bags-in-all";
  private final World world;
  private final Program program;
  private final Joint joint;
  private final Map<Share, Linear> eaten = new LinkedHashMap<>();
  private final Map<Share, Linear> got = new LinkedHashMap<>();
  private final Map<Row, Linear> bought = new LinkedHashMap<>();

  private record Share(String keeper, String item) {}

  private record Row(String supplier, Pack pack) {}

  /**
   * Nothing is added yet.
   *
   * @param world the joint world
   * @param program of a relaxation of it
   */
  BagsInAll(World world, Program program) {
    this.world = world;
    this.program = program;
    joint = world.joint();
  }

  void add() {
    program.decisions().served().forEach(this::eat);
    for (StockLot lot : world.scenario().larder().stock()) {
      get(joint.keeperOf(world.freezer(lot.freezer())), lot.item(), lot.pieces());
    }
    for (PlacedLot lot : world.scenario().larder().placed()) {
      get(joint.keepers().getOrDefault(lot.id(), ""), lot.item(), lot.pieces());
    }
    program.decisions().orders().values().forEach(this::buy);
    bought.forEach(this::handOut);
    eaten.forEach(
        (share, pieces) -> program.model().atLeast(ID, got(share).copy().minus(pieces), 0));
  }

  private void eat(Decisions.Served served) {
    for (int x = 0; x < served.byChoice().size(); x++) {
      DemandClass.Choice choice = served.demandClass().choices().get(x);
      Share share = new Share(served.demandClass().keeper(), choice.option().item().id());
      eaten
          .computeIfAbsent(share, s -> new Linear())
          .plus(choice.option().pieces(), served.byChoice().get(x));
    }
  }

  private Linear got(Share share) {
    return got.computeIfAbsent(share, s -> new Linear());
  }

  private void get(String keeper, Item item, int pieces) {
    got(new Share(keeper, item.id())).plus(pieces);
  }

  private void buy(OrderDecisions order) {
    String supplier = order.slot().supplier();
    for (OrderDecisions.PackDecision row : order.packs().values()) {
      if (joint.isJoint(order.slot())) {
        Row same = new Row(supplier, row.pack());
        bought.computeIfAbsent(same, r -> new Linear()).plus(1, row.count());
      } else {
        Share own = new Share(joint.buyers().get(supplier), row.pack().item().id());
        got(own).plus(row.pack().pieces(), row.count());
      }
    }
  }

  private void handOut(Row row, Linear count) {
    double most = program.model().most(count);
    int pieces = row.pack().pieces();
    boolean whole = pieces > 1 && joint.cutting().least(row.pack()) == pieces;
    Linear left = count.copy();
    for (Share share : eaten.keySet()) {
      if (share.item().equals(row.pack().item().id())) {
        Var bags = whole ? program.model().whole(0, most) : program.model().real(0, most);
        left.plus(-1, bags);
        got(share).plus(pieces, bags);
      }
    }
    program.model().atLeast(ID, left, 0);
  }
}
