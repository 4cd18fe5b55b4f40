package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.supply.BoxFit;
import io.frostlot.supply.Item;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Supplier;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/**
 * What one delivery brings: packs for one meal after another, while these can be had, boxes hold
 * them and freezers have room.
 */
final class Basket {
  /** Whole packs leave some of the boxes empty. */
  private static final double FULL = 0.9;

  private final ToIntFunction<Pack> available;
  private final long[] boxRoom;
  private long room;
  private final Map<Item, Integer> covered = new HashMap<>();
  private final SortedMap<Pack, Integer> packs = new TreeMap<>(Comparator.comparing(Pack::id));

  /**
   * Nothing yet.
   *
   * @param room in the freezers, in microlitres
   * @param available most packs of a row
   */
  Basket(Supplier supplier, long room, ToIntFunction<Pack> available) {
    this.room = room;
    this.available = available;
    boxRoom = BoxFit.sizes(supplier.boxing().limits());
    for (int d = 0; d < boxRoom.length; d++) {
      double most = (double) boxRoom[d] * supplier.boxing().mostBoxes() * FULL;
      boxRoom[d] = supplier.isPickUp() ? Long.MAX_VALUE : (long) Math.min(most, Long.MAX_VALUE);
    }
  }

  /** Pieces that need not be bought. */
  void has(Item item, int pieces) {
    covered.merge(item, pieces, Integer::sum);
  }

  boolean knows(Item item) {
    return covered.containsKey(item);
  }

  /** Takes care of as many of some meals as can be, and returns how many. */
  int take(Option option, Pack pack, int meals) {
    Item item = option.item();
    int there = Math.max(0, covered.getOrDefault(item, 0));
    int lacking = meals * option.pieces() - there;
    int own = pack.piecesOf(item);
    if (lacking > 0) {
      add(pack, Math.min((lacking + own - 1) / own, most(pack)));
      there = Math.max(0, covered.getOrDefault(item, 0));
    }
    int taken = Math.min(meals, there / option.pieces());
    covered.merge(item, -taken * option.pieces(), Integer::sum);
    return taken;
  }

  private int most(Pack pack) {
    long most = (long) available.applyAsInt(pack) - packs.getOrDefault(pack, 0);
    long litres = pack.room().microlitres();
    most = litres == 0 ? most : Math.min(most, room / litres);
    long[] size = BoxFit.sizes(pack);
    for (int d = 0; d < size.length; d++) {
      most = size[d] == 0 ? most : Math.min(most, boxRoom[d] / size[d]);
    }
    return (int) Math.max(0, most);
  }

  private void add(Pack pack, int count) {
    if (count < 1) {
      return;
    }
    packs.merge(pack, count, Integer::sum);
    pack.parts().forEach(part -> has(part.item(), count * part.pieces()));
    room -= count * pack.room().microlitres();
    long[] size = BoxFit.sizes(pack);
    for (int d = 0; d < size.length; d++) {
      boxRoom[d] -= count * size[d];
    }
  }

  SortedMap<Pack, Integer> packs() {
    return packs;
  }

  /** The price of all packs by the price sheet. */
  double goods() {
    return packs.entrySet().stream()
        .mapToDouble(some -> some.getKey().price().toDouble() * some.getValue())
        .sum();
  }
}
