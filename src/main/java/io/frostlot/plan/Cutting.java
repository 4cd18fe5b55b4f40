package io.frostlot.plan;

import io.frostlot.supply.Pack;
import java.util.Map;

/**
 * Which bags of a joint order may be cut, and into portions of at least how many pieces.
 *
 * @param leastPieces of a portion, by pack id; a bag not in it goes whole to one keeper
 * @param all true: any bag may be cut into single pieces
 */
public record Cutting(Map<String, Integer> leastPieces, boolean all) {
  /** Any bag into single pieces. */
  public static final Cutting ANY = new Cutting(Map.of(), true);

  public Cutting {
    leastPieces = Map.copyOf(leastPieces);
  }

  /** Pieces of the smallest portion; all of the bag where it may not be cut in two. */
  public int least(Pack pack) {
    int least = all ? 1 : leastPieces.getOrDefault(pack.id(), pack.pieces());
    return 2 * least > pack.pieces() ? pack.pieces() : least;
  }

  public boolean mayCut(Pack pack) {
    return least(pack) < pack.pieces();
  }
}
