package io.frostlot.oracle;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.storage.StockLot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Writes down as a plan what was done on the way. */
final class PlanWriter {
  private final Tiny tiny;
  private final List<Order> orders = new ArrayList<>();
  private final List<Lot> lots = new ArrayList<>();
  private final List<Integer> left = new ArrayList<>();
  private final List<Feeding> feedings = new ArrayList<>();
  private final List<Discard> discards = new ArrayList<>();

  PlanWriter(Tiny tiny) {
    this.tiny = tiny;
    for (StockLot lot : tiny.world.scenario().larder().stock()) {
      add(Lot.of(lot));
    }
  }

  private void add(Lot lot) {
    lots.add(lot.named("lot " + (lots.size() + 1)));
    left.add(lot.pieces());
  }

  Plan write(List<Move> moves) {
    for (Move move : moves) {
      if (move instanceof Move.Bought bought) {
        orders.add(bought.order());
      } else if (move instanceof Move.PutAway put) {
        add(put.lot());
      } else if (move instanceof Move.Eaten eaten) {
        feedings.add(
            new Feeding(eaten.demand().meal().id(), eaten.day(), eaten.option(), 1, List.of()));
      } else if (move instanceof Move.Carried carried) {
        carry(carried);
      } else {
        take((Move.Taken) move);
      }
    }
    List<Lot> there = lots.stream().filter(lot -> lot.pieces() > 0).toList();
    return new Plan(orders, there, feedings, discards);
  }

  /** What is carried becomes a lot by itself. */
  private void carry(Move.Carried carried) {
    int open = carried.count();
    for (int i = lots.size() - 1; i >= 0 && open > 0; i--) {
      Lot lot = lots.get(i);
      int here = tiny.pieces(lot).equals(carried.from()) ? Math.min(open, left.get(i)) : 0;
      if (here > 0 && isThere(lot, carried.day())) {
        open -= here;
        left.set(i, left.get(i) - here);
        lots.set(i, lot.withPieces(lot.pieces() - here));
        int useBy = tiny.moved(carried.from(), carried.into(), tiny.day(carried.day())).useBy();
        String into = tiny.freezers.get(carried.into()).name();
        add(lot.withPieces(here).movedInto(into, carried.day(), tiny.date(useBy)));
      }
    }
    if (open > 0) {
      throw new IllegalStateException("not there: " + carried);
    }
  }

  private static boolean isThere(Lot lot, LocalDate day) {
    return lot.origin() instanceof Lot.InHand || lot.latest().isBefore(day);
  }

  private void take(Move.Taken taken) {
    int open = taken.count();
    for (int i = 0; i < lots.size() && open > 0; i++) {
      Lot lot = lots.get(i);
      if (tiny.pieces(lot).equals(taken.from()) && mayBeTaken(lot, taken)) {
        int here = Math.min(open, left.get(i));
        open -= here;
        left.set(i, left.get(i) - here);
        if (here > 0 && taken.eaten()) {
          draw(new Feeding.Draw(lot.id(), here));
        } else if (here > 0) {
          discards.add(new Discard(lot.id(), taken.day(), here));
        }
      }
    }
    if (open > 0) {
      throw new IllegalStateException("not there: " + taken);
    }
  }

  private static boolean mayBeTaken(Lot lot, Move.Taken taken) {
    LocalDate day = taken.day();
    boolean onItsDay = taken.eaten() || lot.origin() instanceof Lot.InHand;
    return onItsDay ? !lot.latest().isAfter(day) : lot.latest().isBefore(day);
  }

  private void draw(Feeding.Draw draw) {
    Feeding last = feedings.remove(feedings.size() - 1);
    List<Feeding.Draw> draws = new ArrayList<>();
    int before = 0;
    for (Feeding.Draw one : last.draws()) {
      if (one.lotId().equals(draw.lotId())) {
        before += one.pieces();
      } else {
        draws.add(one);
      }
    }
    draws.add(new Feeding.Draw(draw.lotId(), before + draw.pieces()));
    feedings.add(new Feeding(last.mealId(), last.day(), last.option(), last.meals(), draws));
  }
}
