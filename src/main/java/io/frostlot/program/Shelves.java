package io.frostlot.program;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Lot;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The lots of a solution, and which of them each segment's meals take: within a freezer what goes
 * past its use-by first is eaten first. What is never eaten stays until its use-by, or is thrown
 * away when the solution does so.
 */
final class Shelves {
  private static final double WHOLE = 1e-6;
  private final double[] point;
  private final boolean throwAway;
  private final List<Lot> lots = new ArrayList<>();
  private final Map<Lot, Lot> byKind = new HashMap<>();
  private final List<Discard> discards = new ArrayList<>();
  private final Map<Place, Deque<Piece>> taken = new HashMap<>();

  private record Place(String keeper, String item, int segment) {}

  private record Piece(Lot lot, int count) {}

  /**
   * Reads a solution.
   *
   * @param throwAway throw away when the solution does, instead of keeping as long as possible
   */
  Shelves(Program program, double[] point, boolean throwAway) {
    this.point = point;
    this.throwAway = throwAway;
    Joint joint = program.decisions().world().joint();
    name(program.decisions().flows());
    program.decisions().flows().forEach(flow -> new Walk(flow, joint).run());
  }

  List<Lot> lots() {
    return lots;
  }

  List<Discard> discards() {
    return discards;
  }

  /** The lots from which pieces for a keeper's meals of one segment come. */
  List<Feeding.Draw> take(String keeper, DemandClass.Choice choice, int pieces) {
    Place place = new Place(keeper, choice.option().item().id(), choice.segment());
    Deque<Piece> queue = taken.getOrDefault(place, new ArrayDeque<>());
    Map<String, Integer> draws = new LinkedHashMap<>();
    int need = pieces;
    while (need > 0 && !queue.isEmpty()) {
      Piece next = queue.poll();
      int count = Math.min(need, next.count());
      draws.merge(next.lot().id(), count, Integer::sum);
      need -= count;
      if (count < next.count()) {
        queue.addFirst(new Piece(next.lot(), next.count() - count));
      }
    }
    return draws.entrySet().stream().map(e -> new Feeding.Draw(e.getKey(), e.getValue())).toList();
  }

  /** Gives each lot its name and its pieces, which may be parts of several flows. */
  private void name(Iterable<Flow> flows) {
    Map<Lot, Integer> pieces = new LinkedHashMap<>();
    for (Flow flow : flows) {
      flow.parts().forEach(part -> pieces.merge(part.lot(), pieces(part), Integer::sum));
    }
    pieces.forEach(
        (kind, count) -> {
          if (count > 0) {
            Lot lot = kind.named("lot " + (lots.size() + 1)).withPieces(count);
            lots.add(lot);
            byKind.put(kind, lot);
          }
        });
  }

  private int pieces(Flow.Part part) {
    return (int) Math.round(part.pieces().at(point));
  }

  /** What is left of a part. */
  private static final class Batch {
    private final Lot lot;
    private final Flow.Part part;
    private int left;

    Batch(Lot lot, Flow.Part part, int left) {
      this.lot = lot;
      this.part = part;
      this.left = left;
    }

    /** Is it there still on the day after its last in the flow, unless it is thrown away? */
    boolean outlasts() {
      return Timeline.day(lot.useBy()) > part.until();
    }
  }

  /** One flow, interval by interval. */
  private final class Walk {
    private final Flow flow;
    private final String keeper;
    private final List<Batch> coming = new ArrayList<>();
    private final List<Batch> present = new ArrayList<>();

    Walk(Flow flow, Joint joint) {
      this.flow = flow;
      keeper = joint.keeperOf(flow.freezer());
      for (Flow.Part part : flow.parts()) {
        if (pieces(part) > 0) {
          coming.add(new Batch(byKind.getOrDefault(part.lot(), part.lot()), part, pieces(part)));
        }
      }
      coming.sort(Comparator.comparing(batch -> batch.part.until()));
    }

    void run() {
      for (int k = 0; k < flow.intervals(); k++) {
        int day = flow.days().intervals()[k];
        List<Batch> now =
            coming.stream()
                .filter(batch -> batch.part.from() == day && batch.part.until() >= day)
                .toList();
        now.stream().filter(batch -> !batch.part.isDelivered()).forEach(present::add);
        leave(day);
        double kept = flow.thrown(k).at(point) + point[flow.stock(k).index()];
        int delivered =
            now.stream()
                .filter(batch -> batch.part.isDelivered())
                .mapToInt(batch -> batch.left)
                .sum();
        throwAway(present, day, inAll() + delivered - whole(kept));
        now.stream().filter(batch -> batch.part.isDelivered()).forEach(present::add);
        int eaten = eat(k);
        int keep = whole(point[flow.stock(k).index()]) - eaten;
        leave(day + 1);
        throwAway(present, day + 1, inAll() - keep);
      }
    }

    /** What is no longer part of the flow on a day leaves, and is thrown away if it must be. */
    private void leave(int day) {
      List<Batch> over = present.stream().filter(batch -> batch.part.until() < day).toList();
      present.removeAll(over);
      for (Batch batch : over) {
        throwAway(
            batch.outlasts() ? List.of(batch) : List.of(), batch.part.until() + 1, batch.left);
      }
    }

    private int whole(double value) {
      return (int) Math.floor(value + WHOLE);
    }

    private int inAll() {
      return present.stream().mapToInt(batch -> batch.left).sum();
    }

    private int eat(int interval) {
      int eaten = 0;
      int last = flow.days().intervalEnd(interval);
      for (int s = flow.days().segment(flow.days().intervals()[interval]);
          s < flow.days().segments().length && flow.days().segments()[s] <= last;
          s++) {
        int need = (int) Math.round(flow.eaten(s).at(point));
        eaten += need;
        for (Batch batch : present) {
          int count = Math.min(need, batch.left);
          if (count > 0) {
            batch.left -= count;
            need -= count;
            taken
                .computeIfAbsent(
                    new Place(keeper, flow.item().id(), s), place -> new ArrayDeque<>())
                .add(new Piece(batch.lot, count));
          }
        }
      }
      return eaten;
    }

    private void throwAway(List<Batch> from, int day, int pieces) {
      int most = throwAway && day <= flow.days().last() ? pieces : 0;
      for (Batch batch : from) {
        int count = Math.min(most, batch.left);
        if (count > 0) {
          discards.add(new Discard(batch.lot.id(), Timeline.date(day), count));
          batch.left -= count;
          most -= count;
        }
      }
    }
  }
}
