package io.frostlot.program;

import io.frostlot.supply.Pack;
import java.util.BitSet;
import java.util.List;

/**
 * A pack and who gets which of its pieces.
 *
 * @param parts every ware at most once
 */
record Bag(Pack pack, List<Part> parts) {
  Bag {
    parts = List.copyOf(parts);
  }

  /**
   * Pieces that one keeper gets of an item.
   *
   * @param ware by number
   */
  record Part(int ware, int pieces) {}

  /** All wares of its parts, by number. */
  BitSet wares() {
    BitSet wares = new BitSet();
    parts.forEach(part -> wares.set(part.ware()));
    return wares;
  }
}
