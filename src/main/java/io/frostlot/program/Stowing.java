package io.frostlot.program;

import io.frostlot.plan.Lot;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.storage.PlacedLot;
import io.frostlot.storage.StockLot;
import io.frostlot.supply.Pack;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Puts what is in hand, under way and ordered into flows: how many pieces of it go into which
 * freezer, and are moved from there, and, where a piece that is past its best is charged for, how
 * many of these are eaten, or kept, after that.
 */
final class Stowing {
  private final World world;
  private final Timeline timeline;
  private final Model model;
  private final Map<String, List<Flow>> flows = new LinkedHashMap<>();

  /** One way that pieces can go. */
  private record Way(Flow.Shelf shelf, Lot lot, int from, int until) {}

  Stowing(World world, Timeline timeline, Model model) {
    this.world = world;
    this.timeline = timeline;
    this.model = model;
  }

  /** Flows by item. */
  Map<String, List<Flow>> stow(Iterable<OrderDecisions> orders) {
    LotKinds kinds = timeline.lotKinds();
    for (StockLot lot : world.scenario().larder().stock()) {
      put(kinds.of(lot), Linear.constant(lot.pieces()));
    }
    for (PlacedLot lot : world.scenario().larder().placed()) {
      put(kinds.of(lot), Linear.constant(lot.pieces()));
    }
    for (OrderDecisions order : orders) {
      order.packs().keySet().stream()
          .flatMap(Pack::items)
          .distinct()
          .forEach(item -> put(kinds.of(item, order.slot()), order.pieces(item)));
    }
    return flows;
  }

  /**
   * Splits what comes over the lots that it may become, and the ways that these can go; what may
   * lie nowhere, as where no freezer is in use, does not come.
   */
  private void put(Stream<Lot> lots, Linear pieces) {
    List<Lot> all = lots.toList();
    if (all.isEmpty()) {
      model.equal(EveryPiece.ID, pieces, 0);
    }
    List<Way> ways = all.stream().flatMap(lot -> ways(lot).stream()).toList();
    Linear left = pieces.copy();
    for (Way way : ways) {
      Linear share = pieces;
      if (ways.size() > 1) {
        Var put = model.follows(0, model.most(pieces));
        share = Linear.of(put);
        left.plus(-1, put);
      }
      add(way.shelf(), new Flow.Part(way.lot(), coming(way.lot()), way.from(), way.until(), share));
    }
    if (ways.size() > 1) {
      model.equal(EveryPiece.ID, left, 0);
    }
  }

  private Flow.Coming coming(Lot lot) {
    return lot.origin() instanceof Lot.InHand
        ? new Flow.Coming(timeline.first(), timeline.first(), timeline.first())
        : new Flow.Coming(
            Timeline.day(lot.earliest()), timeline.at(lot.earliest()), timeline.at(lot.latest()));
  }

  /** Before its best before and after, where that makes a difference. */
  private List<Way> ways(Lot lot) {
    Freezer freezer = world.freezer(lot.freezer());
    int from = Math.max(coming(lot).latest(), timeline.at(lot.takenFrom()));
    int until = timeline.putOff(lot.item(), lot.useBy());
    Flow.Shelf atBest = new Flow.Shelf(lot.item(), freezer, false);
    int best =
        timeline.isPastBestCharged()
            ? Math.min(until, timeline.putOff(lot.item(), world.bestBefore(lot)))
            : until;
    List<Way> ways = new ArrayList<>();
    if (best >= from || best == until) {
      ways.add(new Way(atBest, lot, from, best));
    }
    if (best < until && best < timeline.last()) {
      Flow.Shelf past = new Flow.Shelf(lot.item(), freezer, true);
      ways.add(new Way(past, lot, Math.max(from, best + 1), until));
    }
    return ways;
  }

  /** Adds pieces to a flow whose order they keep, or to a new one. */
  private void add(Flow.Shelf shelf, Flow.Part part) {
    List<Flow> ofItem = flows.computeIfAbsent(shelf.item().id(), k -> new ArrayList<>());
    Optional<Flow> found =
        ofItem.stream()
            .filter(flow -> flow.shelf().equals(shelf) && flow.keepsOrder(part))
            .findFirst();
    Flow flow = found.orElseGet(() -> new Flow(shelf, timeline, model));
    if (found.isEmpty()) {
      ofItem.add(flow);
    }
    flow.add(part, model);
  }
}
