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
  private final Map<String, List<Batch>> batches = new HashMap<>();
  private final Map<String, Shelf> shelves = new LinkedHashMap<>();
  private final List<Lot> lots = new ArrayList<>();
  private final List<Lot> recent = new ArrayList<>();
  private final HoldingCharge holding;
  private final long largestPiece;
  private long pieces;

  /** A lot and what is left of it. */
  private static final class Batch {
    private final Lot lot;
    private int left;

    Batch(Lot lot) {
      this.lot = lot;
      left = lot.pieces();
    }

    int usableOn(int day) {
      return Timeline.day(lot.latest()) <= day ? left : 0;
    }
  }

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
    List<Batch> ofItem = batches.computeIfAbsent(lot.item().id(), id -> new ArrayList<>());
    int at = ofItem.size();
    while (at > 0 && ofItem.get(at - 1).lot.useBy().isAfter(lot.useBy())) {
      at--;
    }
    ofItem.add(at, new Batch(lot));
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
      List<Batch> within =
          batches.values().stream()
              .flatMap(List::stream)
              .filter(batch -> batch.lot.freezer().equals(shelf.freezer.name()))
              .toList();
      for (Batch batch : within) {
        int pieces = shelf.taken > room ? (int) Math.ceil(share * batch.left) : 0;
        if (pieces > 0) {
          discards.add(new Discard(batch.lot.id(), Timeline.date(day), pieces));
          batch.left -= pieces;
          take(batch.lot, -pieces);
        }
      }
    }
    return discards;
  }

  /** The start of a day: what is past its use-by leaves. */
  void begin(int day) {
    for (List<Batch> ofItem : batches.values()) {
      while (!ofItem.isEmpty() && Timeline.day(ofItem.get(0).lot.useBy()) < day) {
        take(ofItem.get(0).lot, -ofItem.remove(0).left);
      }
    }
  }

  /** Pieces that can be eaten on a day. */
  int there(Item item, int day) {
    int there = 0;
    for (Batch batch : batches.getOrDefault(item.id(), List.of())) {
      there += batch.usableOn(day);
    }
    return there;
  }

  /** Pieces of an item that are there, or on their way, and can still be eaten on a day. */
  int lasting(Item item, int day) {
    int lasting = 0;
    for (Batch batch : batches.getOrDefault(item.id(), List.of())) {
      lasting += Timeline.day(batch.lot.useBy()) >= day ? batch.left : 0;
    }
    return lasting;
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
    List<Batch> ofItem = batches.getOrDefault(item.id(), List.of());
    int need = pieces;
    for (int i = 0; need > 0; i++) {
      Batch batch = ofItem.get(i);
      int count = Math.min(need, batch.usableOn(day));
      if (count > 0) {
        draws.add(new Feeding.Draw(batch.lot.id(), count));
        batch.left -= count;
        take(batch.lot, -count);
        need -= count;
      }
    }
    ofItem.removeIf(batch -> batch.left == 0);
    return draws;
  }
}
