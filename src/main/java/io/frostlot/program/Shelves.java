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

  /** One flow, interval by interval. */
  private final class Walk {
    private final Flow flow;
    private final String keeper;
    private final List<Lot> arriving = new ArrayList<>();
    private final List<Lot> present = new ArrayList<>();
    private final Map<Lot, Integer> left = new HashMap<>();

    Walk(Flow flow, Joint joint) {
      this.flow = flow;
      keeper = joint.keeperOf(flow.freezer());
      for (Flow.Part part : flow.parts()) {
        int pieces = (int) Math.round(part.pieces().at(point));
        if (pieces > 0) {
          Lot lot = lot(part, pieces);
          lots.add(lot);
          arriving.add(lot);
          left.put(lot, pieces);
        }
      }
      arriving.sort(Comparator.comparing(Lot::useBy));
    }

    private Lot lot(Flow.Part part, int pieces) {
      return new Lot(
          "lot " + (lots.size() + 1),
          flow.item(),
          pieces,
          flow.freezer().name(),
          Timeline.date(part.earliest()),
          Timeline.date(part.latest()),
          Timeline.date(part.useBy()),
          part.origin());
    }

    void run() {
      for (int k = 0; k < flow.intervals(); k++) {
        int day = flow.days().intervals()[k];
        List<Lot> coming = coming(day);
        coming.stream().filter(lot -> lot.origin() instanceof Lot.InHand).forEach(present::add);
        present.removeIf(lot -> Timeline.day(lot.useBy()) < day);
        double kept = flow.thrown(k).at(point) + point[flow.stock(k).index()];
        int delivered =
            coming.stream().filter(lot -> !present.contains(lot)).mapToInt(Lot::pieces).sum();
        throwAway(day, pieces() + delivered - whole(kept));
        coming.stream().filter(lot -> !present.contains(lot)).forEach(present::add);
        int eaten = eat(k);
        int keep = whole(point[flow.stock(k).index()]) - eaten;
        present.removeIf(lot -> Timeline.day(lot.useBy()) <= day);
        throwAway(day + 1, pieces() - keep);
      }
    }

    private List<Lot> coming(int day) {
      return arriving.stream()
          .filter(lot -> Timeline.day(lot.latest()) == day && Timeline.day(lot.useBy()) >= day)
          .toList();
    }

    private int whole(double value) {
      return (int) Math.floor(value + WHOLE);
    }

    private int pieces() {
      return present.stream().mapToInt(left::get).sum();
    }

    private int eat(int interval) {
      int eaten = 0;
      int last = flow.days().intervalEnd(interval);
      for (int s = flow.days().segment(flow.days().intervals()[interval]);
          s < flow.days().segments().length && flow.days().segments()[s] <= last;
          s++) {
        int need = (int) Math.round(flow.eaten(s).at(point));
        eaten += need;
        for (Lot lot : present) {
          int count = Math.min(need, left.get(lot));
          if (count > 0) {
            left.merge(lot, -count, Integer::sum);
            need -= count;
            taken
                .computeIfAbsent(
                    new Place(keeper, flow.item().id(), s), place -> new ArrayDeque<>())
                .add(new Piece(lot, count));
          }
        }
      }
      return eaten;
    }

    private void throwAway(int day, int pieces) {
      int most = throwAway && day <= flow.days().last() ? pieces : 0;
      for (Lot lot : present) {
        int count = Math.min(most, left.get(lot));
        if (count > 0) {
          discards.add(new Discard(lot.id(), Timeline.date(day), count));
          left.merge(lot, -count, Integer::sum);
          most -= count;
        }
      }
    }
  }
}
