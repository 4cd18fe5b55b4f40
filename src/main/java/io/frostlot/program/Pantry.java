package io.frostlot.program;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.HoldingCharge;
import io.frostlot.plan.Lot;
import io.frostlot.plan.World;
import io.frostlot.storage.Freezer;
import io.frostlot.supply.Item;
import io.frostlot.units.Litres;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What lies in the freezers while days go by; what goes past its use-by first is eaten first. */
final class Pantry {
  private final Map<String, ByUseBy<Lot>> stock = new HashMap<>();
  private final Map<String, Shelf> shelves = new LinkedHashMap<>();
  private final List<Lot> lots = new ArrayList<>();
  private final List<Lot> recent = new ArrayList<>();
  private final HoldingCharge holding;
  private final long largestPiece;
  private long pieces;

  /** A freezer and the room that is taken. */
  private static final class Shelf {
    private final Freezer freezer;
    private long taken;

    Shelf(Freezer freezer) {
      this.freezer = freezer;
    }

    long free(int from) {
      long least =
          freezer.access().limits().stream()
              .filter(limit -> Timeline.day(limit.days().to()) >= from)
              .mapToLong(limit -> limit.litres().microlitres())
              .min()
              .orElse(Long.MAX_VALUE);
      return Math.max(0, Math.min(least, freezer.usable().microlitres()) - taken);
    }
  }

  Pantry(World world) {
    holding = world.scenario().policy().charges().holding();
    largestPiece =
        world.items().values().stream()
            .mapToLong(item -> item.litres().microlitres())
            .max()
            .orElse(0);
    world
        .scenario()
        .larder()
        .freezers()
        .forEach(freezer -> shelves.put(freezer.name(), new Shelf(freezer)));
  }

  /** Everything that ever came. */
  List<Lot> lots() {
    return lots;
  }

  /**
   * Room for what comes on a day, in microlitres, on that and all later days; a piece is never cut,
   * so that some room in each freezer may be of no use.
   */
  long free(int day) {
    return shelves.values().stream()
        .filter(shelf -> shelf.freezer.inUse())
        .mapToLong(shelf -> Math.max(0, shelf.free(day) - largestPiece))
        .sum();
  }

  /** Puts a lot where it says, whether it fits or not. */
  void put(Lot lot) {
    lots.add(lot);
    if (!(lot.origin() instanceof Lot.InHand)) {
      recent.add(lot);
    }
    of(lot.item())
        .add(
            lot,
            new ByUseBy.Days(Timeline.day(lot.latest()), Timeline.day(lot.useBy())),
            lot.pieces());
    take(lot, lot.pieces());
  }

  /**
   * Puts pieces into freezers with room for them, those where they keep longest first; returns how
   * many found none.
   *
   * @param kinds the lots that they may become, of one item
   */
  int stow(List<Lot> kinds, int pieces) {
    List<Lot> longestFirst = new ArrayList<>(kinds);
    longestFirst.sort((a, b) -> b.useBy().compareTo(a.useBy()));
    int left = pieces;
    for (Lot kind : longestFirst) {
      Shelf shelf = shelves.get(kind.freezer());
      Litres each = kind.item().litres();
      long room = shelf == null ? 0 : shelf.free(Timeline.day(kind.earliest()));
      long fits = each.microlitres() == 0 ? left : room / each.microlitres();
      int put = (int) Math.min(left, fits);
      if (put > 0) {
        put(kind.named("lot " + (lots.size() + 1)).withPieces(put));
        left -= put;
      }
    }
    return left;
  }

  private void take(Lot lot, int count) {
    pieces += count;
    Shelf shelf = shelves.get(lot.freezer());
    if (shelf != null) {
      shelf.taken += count * lot.item().litres().microlitres();
    }
  }

  /** What is charged for all that lies there at night. */
  double night() {
    long taken = shelves.values().stream().mapToLong(shelf -> shelf.taken).sum();
    return holding.of(pieces, new Litres(taken)).toDouble();
  }

  /**
   * Throws away, of each lot about as large a part, what a freezer has no room for on a day.
   *
   * @return by lot
   */
  List<Discard> makeRoom(int day) {
    List<Discard> discards = new ArrayList<>();
    for (Shelf shelf : shelves.values()) {
      long room = shelf.freezer.usableOn(Timeline.date(day)).microlitres();
      double share = 1 - (double) room / Math.max(1, shelf.taken);
      List<ByUseBy.Batch<Lot>> within =
          stock.values().stream()
              .flatMap(ofItem -> ofItem.batches().stream())
              .filter(batch -> batch.as().freezer().equals(shelf.freezer.name()))
              .toList();
      for (ByUseBy.Batch<Lot> batch : within) {
        int pieces = shelf.taken > room ? (int) Math.ceil(share * batch.left()) : 0;
        if (pieces > 0) {
          discards.add(new Discard(batch.as().id(), Timeline.date(day), pieces));
          batch.lose(pieces);
          take(batch.as(), -pieces);
        }
      }
    }
    return discards;
  }

  /** The start of a day: what is past its use-by leaves. */
  void begin(int day) {
    stock.values().forEach(ofItem -> ofItem.begin(day, (lot, left) -> take(lot, -left)));
  }

  private ByUseBy<Lot> of(Item item) {
    return stock.computeIfAbsent(item.id(), id -> new ByUseBy<>());
  }

  /** Pieces that can be eaten on a day. */
  int there(Item item, int day) {
    return of(item).there(day);
  }

  /** Pieces of an item that are there, or on their way, and can still be eaten on a day. */
  int lasting(Item item, int day) {
    return of(item).lasting(day);
  }

  /** Pieces that came less than some days before a night and are not there as cover. */
  long lacking(int coverDays, int day) {
    recent.removeIf(lot -> Timeline.day(lot.latest()) <= day - coverDays);
    Map<Item, Integer> came = new HashMap<>();
    for (Lot lot : recent) {
      if (Timeline.day(lot.latest()) <= day) {
        came.merge(lot.item(), lot.pieces(), Integer::sum);
      }
    }
    long lacking = 0;
    for (Map.Entry<Item, Integer> some : came.entrySet()) {
      lacking += Math.max(0, some.getValue() - there(some.getKey(), day));
    }
    return lacking;
  }

  /** Takes pieces that are there. */
  List<Feeding.Draw> eat(Item item, int pieces, int day) {
    List<Feeding.Draw> draws = new ArrayList<>();
    of(item)
        .take(
            pieces,
            day,
            (lot, count) -> {
              draws.add(new Feeding.Draw(lot.id(), count));
              take(lot, -count);
            });
    return draws;
  }
}
