package io.frostlot.program;

import io.frostlot.plan.Books;
import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Levels;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Pack;
import java.util.HashMap;
import java.util.Map;

/**
 * Nothing is eaten that is not there, and every piece that comes lies somewhere.
 *
 * <p>For each flow and interval k: stock(k) + thrown(k) &lt;= stock(k-1) - eaten(k-1) +
 * arriving(k); stock(k) &gt;= eaten(k); stock(k) + thrown(k) &gt;= what is delivered on its first
 * day, for a delivery is put away whole before anything of it is thrown away. The inequality is
 * throwing away at the start of a day. All in pieces.
 */
final class EveryPiece implements Rule {
  static final String ID = "every-piece";
  private final World world;

  EveryPiece(World world) {
    this.world = world;
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String says() {
    return "Nothing is eaten that is not there, and every piece that comes is put away.";
  }

  @Override
  public boolean relaxable() {
    return false;
  }

  @Override
  public void impose(Program program) {
    for (Flow flow : program.decisions().flows()) {
      for (int k = 0; k < flow.intervals(); k++) {
        Linear there = Linear.of(flow.stock(k)).plus(flow.thrown(k));
        Linear arriving = flow.arriving(k);
        Linear surplus = there.copy().minus(arriving);
        if (k > 0) {
          surplus.plus(-1, flow.stock(k - 1)).plus(flow.eatenIn(k - 1));
        }
        program.model().atMost(ID, surplus, 0);
        program.model().atLeast(ID, Linear.of(flow.stock(k)).minus(flow.eatenIn(k)), 0);
        if (!flow.thrown(k).hasNoTerms()) {
          program.model().atLeast(ID, there.minus(delivered(flow, k)), 0);
        }
      }
    }
  }

  private static Linear delivered(Flow flow, int interval) {
    Linear sum = new Linear();
    flow.parts().stream()
        .filter(part -> part.isDelivered() && part.from() == flow.days().intervals()[interval])
        .filter(part -> part.until() >= part.from())
        .forEach(part -> sum.plus(part.pieces()));
    return sum;
  }

  @Override
  public void judge(Plan plan, Books books) {
    judgeOrigins(plan, books);
    Levels levels = new Levels(plan);
    Map<String, Lot> lots = new HashMap<>();
    for (Lot lot : plan.lots()) {
      if (lots.put(lot.id(), lot) != null) {
        books.breach(ID, "lot " + lot.id(), "named twice", "one lot of that name");
      }
      int atEnd = levels.atNight(lot, lot.useBy());
      if (atEnd < 0) {
        books.breach(
            ID, "lot " + lot.id(), (lot.pieces() - atEnd) + " taken", "at most " + lot.pieces());
      }
    }
    for (Feeding feeding : plan.feedings()) {
      int drawn = 0;
      for (Feeding.Draw draw : feeding.draws()) {
        drawn += draw.pieces();
        Lot lot = lots.get(draw.lotId());
        if (lot == null
            || draw.pieces() < 1
            || !lot.item().equals(feeding.option().item())
            || feeding.day().isBefore(lot.takenFrom())) {
          books.breach(
              ID, feeding.mealId() + " on " + feeding.day(), draw, "pieces that are there");
        }
      }
      if (drawn != feeding.pieces()) {
        books.breach(ID, feeding.mealId() + " on " + feeding.day(), drawn, feeding.pieces());
      }
    }
    for (Discard discard : plan.discards()) {
      Lot lot = lots.get(discard.lotId());
      boolean inHand = lot != null && lot.origin() instanceof Lot.InHand;
      if (lot == null
          || discard.pieces() < 1
          || discard.day().isBefore(lot.takenFrom())
          || (!inHand && discard.day().equals(lot.latest()))) {
        books.breach(ID, "lot " + discard.lotId(), discard, "thrown away once it is there");
      }
    }
  }

  /** What lies in lots is what was in hand, under way or ordered. */
  private void judgeOrigins(Plan plan, Books books) {
    Map<String, Integer> expected = new HashMap<>();
    for (StockLot lot : world.scenario().larder().stock()) {
      expected.put("stock " + lot.id() + " " + lot.freezer(), lot.pieces());
    }
    for (PlacedLot lot : world.scenario().larder().placed()) {
      expected.put("placed " + lot.id(), lot.pieces());
    }
    for (Order order : plan.orders()) {
      for (Order.Line line : order.lines()) {
        for (Pack.Part part : line.pack().parts()) {
          int pieces = line.packs() * part.pieces();
          expected.merge(order.slot() + " " + part.item().id(), pieces, Integer::sum);
        }
      }
    }
    for (Lot lot : plan.lots()) {
      expected.merge(origin(lot), -lot.pieces(), Integer::sum);
    }
    expected.forEach(
        (origin, left) -> {
          if (left != 0) {
            books.breach(ID, origin, left + " pieces in no lot", "0");
          }
        });
  }

  private static String origin(Lot lot) {
    if (lot.origin() instanceof Lot.InHand inHand) {
      return "stock " + inHand.stockLot() + " " + lot.firstFreezer();
    }
    if (lot.origin() instanceof Lot.UnderWay underWay) {
      return "placed " + underWay.placedLot();
    }
    return ((Lot.Ordered) lot.origin()).slot() + " " + lot.item().id();
  }
}
