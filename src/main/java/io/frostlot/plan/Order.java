package io.frostlot.plan;

import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One order: one supplier, one order date, one delivery.
 *
 * @param lines at most one per pack, in canonical order
 * @param promotions ids of the sales and order discounts taken
 * @param boxes how it is packed
 */
public record Order(Slot slot, List<Line> lines, Set<String> promotions, Boxes boxes)
    implements Comparable<Order> {
  public Order {
    lines = List.copyOf(lines);
    promotions = Set.copyOf(promotions);
  }

  /**
   * Packs of one row of the price sheet.
   *
   * @param packs at least 1
   * @param underSale packs bought under each sale, together at most {@code packs}
   */
  public record Line(Pack pack, int packs, SortedMap<String, Integer> underSale) {
    public Line {
      underSale = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(underSale));
      if (packs < 1 || underSale.values().stream().mapToInt(n -> n).sum() > packs) {
        throw new IllegalArgumentException(packs + " of " + pack.id() + ", sales " + underSale);
      }
    }

    public int pieces() {
      return packs * pack.pieces();
    }

    public int packsUnderNoSale() {
      return packs - underSale.values().stream().mapToInt(n -> n).sum();
    }
  }

  /** Packs of each row, over all lines. */
  public Map<Pack, Integer> packs() {
    Map<Pack, Integer> packs = new LinkedHashMap<>();
    lines.forEach(line -> packs.merge(line.pack(), line.packs(), Integer::sum));
    return packs;
  }

  /** The same by the ids of the packs. */
  public SortedMap<String, Integer> packsById() {
    SortedMap<String, Integer> packs = new TreeMap<>();
    lines.forEach(line -> packs.merge(line.pack().id(), line.packs(), Integer::sum));
    return packs;
  }

  /**
   * Boxes of the order.
   *
   * @param count as charged
   * @param contents what is in each, where a pack is never cut; otherwise empty
   */
  public record Boxes(int count, List<List<Content>> contents) {
    public static final Boxes NONE = new Boxes(0, List.of());

    public Boxes {
      contents = contents.stream().map(List::copyOf).toList();
    }
  }

  /** Packs of one row in one box. */
  public record Content(Pack pack, int packs) {}

  public int pieces() {
    return lines.stream().mapToInt(Line::pieces).sum();
  }

  @Override
  public int compareTo(Order other) {
    return slot.compareTo(other.slot);
  }
}
