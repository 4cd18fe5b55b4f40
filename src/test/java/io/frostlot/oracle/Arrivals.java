package io.frostlot.oracle;

import io.frostlot.plan.Lot;
import io.frostlot.plan.Policy;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.supply.Item;
import io.frostlot.supply.Slot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The stages in which something comes: an order or none, and every way of putting it away. */
final class Arrivals {
  private final Tiny tiny;
  private final TotalLimits limits;
  private final int firstLimit;
  private final long effort;
  private final Room room;
  private final Spending spending;
  private final EarlierPlan earlier;

  /**
   * Pieces that come together.
   *
   * @param earliest day
   * @param latest day
   */
  private record Delivery(Lot.Origin origin, LocalDate earliest, LocalDate latest) {}

  Arrivals(Tiny tiny, TotalLimits limits, Spending spending) {
    this.tiny = tiny;
    this.limits = limits;
    room = new Room(tiny);
    this.spending = spending;
    earlier = new EarlierPlan(tiny.world);
    firstLimit = tiny.world.demands().size();
    effort = Amounts.of(tiny.world.scenario().policy().charges().order());
  }

  Stage placed(PlacedLot lot) {
    Delivery delivery =
        new Delivery(new Lot.UnderWay(lot.id()), lot.arrivesEarliest(), lot.arrivesLatest());
    return (state, trail, next) ->
        new Unpacking(delivery, Score.ZERO, next)
            .unpack(Map.of(lot.item(), lot.pieces()), state, trail);
  }

  Stage order(Slot slot, List<Candidates.Candidate> candidates) {
    Delivery delivery =
        new Delivery(new Lot.Ordered(slot), slot.arrivesEarliest(), slot.arrivesLatest());
    return (state, trail, next) -> {
      next.add(state, Score.money(earlier.nothing(slot)), trail);
      for (Candidates.Candidate candidate : candidates) {
        if (mayBeOrdered(candidate, state)) {
          long reckoned = effort + earlier.of(candidate.order());
          Score score =
              new Score(
                  0,
                  0,
                  spending.lacking(state, slot, candidate.cost()),
                  candidate.cost() + reckoned);
          new Unpacking(delivery, score, next)
              .unpack(
                  candidate.pieces(),
                  spending.spend(use(candidate, state), slot, candidate.cost()),
                  trail.then(new Move.Bought(candidate.order())));
        }
      }
    };
  }

  private boolean mayBeOrdered(Candidates.Candidate candidate, State state) {
    for (int limit = 0; limit < limits.size(); limit++) {
      int used = state.counts()[firstLimit + limit] + candidate.uses()[limit];
      if (candidate.uses()[limit] > 0 && used > limits.most(limit)) {
        return false;
      }
    }
    return true;
  }

  private State use(Candidates.Candidate candidate, State state) {
    State after = new State(state.counts(), state.cells(), state.recent(), true, true);
    for (int limit = 0; limit < limits.size(); limit++) {
      int index = firstLimit + limit;
      int used = after.counts()[index] + candidate.uses()[limit];
      after = after.withCount(index, limits.counted(limit, used));
    }
    return after;
  }

  /** Puts one delivery away in every way. */
  private final class Unpacking {
    private final Delivery delivery;
    private final Score cost;
    private final Stage.Next next;

    Unpacking(Delivery delivery, Score cost, Stage.Next next) {
      this.delivery = delivery;
      this.cost = cost;
      this.next = next;
    }

    void unpack(Map<Item, Integer> pieces, State state, Trail trail) {
      Cells recent = state.recent();
      if (!tiny.world.scenario().policy().safety().equals(Policy.Safety.NONE)) {
        for (Map.Entry<Item, Integer> one : pieces.entrySet()) {
          int from = Cells.comingOn(tiny.day(delivery.latest));
          Cells.Kind kind = new Cells.Kind(tiny.item(one.getKey()), 0, false, 0, 0);
          recent = recent.plus(kind, from, one.getValue());
        }
      }
      State now = new State(state.counts(), state.cells(), recent, true, state.ordered());
      put(new Left(new ArrayList<>(pieces.entrySet()), 0), now, trail);
    }

    private void put(Left left, State state, Trail trail) {
      if (!room.mayFit(state.cells(), tiny.day(delivery.earliest))) {
        return;
      }
      if (left.items.isEmpty()) {
        next.add(state, cost, trail);
      } else if (left.freezer < tiny.freezers.size()) {
        int most = tiny.freezers.get(left.freezer).inUse() ? left.pieces() : 0;
        put(left.without(0), state, trail);
        for (int here = 1; here <= most; here++) {
          Lot lot = lot(left, here);
          int from = Cells.comingOn(tiny.day(delivery.latest));
          Cells cells = state.cells().plus(tiny.pieces(lot), from, here);
          put(left.without(here), state.with(cells), trail.then(new Move.PutAway(lot)));
        }
      }
    }

    private Lot lot(Left left, int pieces) {
      Freezer into = tiny.freezers.get(left.freezer);
      return new Lot(
          "",
          left.item(),
          pieces,
          into.name(),
          delivery.earliest,
          delivery.latest,
          into.useBy(left.item(), delivery.earliest),
          delivery.origin);
    }
  }

  /**
   * What is still to be put away.
   *
   * @param freezer of the first item, this and later ones may be used
   */
  private record Left(List<Map.Entry<Item, Integer>> items, int freezer) {
    Item item() {
      return items.get(0).getKey();
    }

    int pieces() {
      return items.get(0).getValue();
    }

    Left without(int pieces) {
      List<Map.Entry<Item, Integer>> left = new ArrayList<>(items);
      if (pieces == pieces()) {
        left.remove(0);
        return new Left(left, 0);
      }
      left.set(0, Map.entry(item(), pieces() - pieces));
      return new Left(left, freezer + 1);
    }
  }
}
