package io.frostlot.program;

import io.frostlot.plan.Alike;
import io.frostlot.plan.Joint;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/**
 * A strengthening of relaxations in which all keepers eat from one freezer: no keeper's animals eat
 * an item before the first day on which any of it can be in a freezer of that keeper, which where
 * orders are collected later is not the day on which they arrive. Holds for every plan of the joint
 * world.
 *
 * <p>For each class of meals c and day d: sum over choices of items that are not there before d of
 * served(c, x) &lt;= the meals of c whose latest day is d or later.
 */
final class ToHaveFirst {
  private static final String ID = "to-have-first";
  private final World world;
  private final Program program;
  private final Timeline timeline;
  private final Map<Having, Integer> first = new HashMap<>();

  private record Having(String keeper, String item) {}

  /**
   * Nothing is added yet.
   *
   * @param world the joint world
   * @param program of a relaxation of it
   */
  ToHaveFirst(World world, Program program) {
    this.world = world;
    this.program = program;
    timeline = program.decisions().timeline();
  }

  void add() {
    for (StockLot lot : world.scenario().larder().stock()) {
      have(world.freezer(lot.freezer()), lot.item(), world.scenario().planning().from());
    }
    for (Freezer freezer : world.scenario().larder().freezers()) {
      for (PlacedLot lot : world.scenario().larder().placed()) {
        have(freezer, lot.item(), lot.arrivesLatest());
      }
      world.slots().forEach(slot -> have(freezer, slot));
    }
    program.decisions().served().forEach(this::notBefore);
  }

  private void have(Freezer freezer, Slot slot) {
    for (Joint.Coming coming : world.joint().comings(slot, freezer)) {
      for (Pack pack : world.supplier(slot.supplier()).sheet().packs()) {
        pack.items().forEach(item -> have(freezer, item, coming.latest()));
      }
    }
  }

  private void have(Freezer freezer, Item item, LocalDate from) {
    Having having = new Having(world.joint().keeperOf(freezer), item.id());
    first.merge(having, timeline.at(from), Math::min);
  }

  private void notBefore(Decisions.Served served) {
    DemandClass some = served.demandClass();
    some.choices().stream()
        .map(choice -> first(some, choice))
        .distinct()
        .forEach(day -> notBefore(served, day));
  }

  private int first(DemandClass some, DemandClass.Choice choice) {
    Having having = new Having(some.keeper(), choice.option().item().id());
    return first.getOrDefault(having, Integer.MAX_VALUE);
  }

  /** As many meals as can wait until a day are served with what cannot be had before it. */
  private void notBefore(Decisions.Served served, int day) {
    DemandClass some = served.demandClass();
    int waiting =
        some.alike().stream()
            .filter(alike -> timeline.at(alike.first().meal().days().latest()) >= day)
            .mapToInt(Alike::count)
            .sum();
    if (waiting < some.count()) {
      Linear sum = served.weighed(choice -> first(some, choice) >= day ? 1 : 0);
      program.model().atMost(ID, sum, waiting);
    }
  }
}
