package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What lies near some packs: of each row that is bought of up to two packs more or less, of others
 * none; what else is decided about orders and meals is free. For some dozens of rows HiGHS finds
 * the best of it in seconds, where with all rows of the same deliveries it has nothing to show
 * within a minute.
 *
 * @param packs of each row, by delivery
 * @param added deliveries of which up to two packs of any row may be bought
 */
record NearPacks(Map<Slot, Map<Pack, Integer>> packs, Set<Slot> added) {
  private static final int FEW = 2;

  NearPacks {
    added = Set.copyOf(added);
  }

  /** Those of a plan, and what little orders in time may bring of what it lacks. */
  static NearPacks of(Answer.Judged plan, World world) {
    return new NearPacks(plan.plan().packs(), new LittleOrders(world).inTimeFor(plan));
  }

  /** All deliveries, in order. */
  List<Slot> slots() {
    return Stream.concat(packs.keySet().stream(), added.stream()).distinct().sorted().toList();
  }

  private int here(Slot slot, Pack pack) {
    return packs.getOrDefault(slot, Map.of()).getOrDefault(pack, 0);
  }

  /** Most packs of a row. */
  int most(Slot slot, Pack pack) {
    int here = here(slot, pack);
    return here == 0 && !added.contains(slot) ? 0 : here + FEW;
  }

  /** Rows that keep a solution from having fewer. */
  List<Model.Row> least(Program program) {
    List<Model.Row> rows = new ArrayList<>();
    for (OrderDecisions order : program.decisions().orders().values()) {
      order
          .packs()
          .forEach(
              (pack, decision) -> {
                int least = here(order.slot(), pack) - FEW;
                if (least > 0) {
                  rows.add(Model.extra(least, Linear.of(decision.count()), Model.INFINITY));
                }
              });
    }
    return rows;
  }
}
