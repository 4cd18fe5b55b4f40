package io.frostlot.program;

import io.frostlot.plan.Discard;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Lot;
import io.frostlot.plan.Order;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Takes bags that are not to be had out of a plan that is being made, and with them the last meals
 * eaten from them.
 *
 * @param lots changed, like the others
 */
record Rationing(List<Lot> lots, List<Feeding> feedings, List<Discard> discards) {
  private static final SortedMap<String, Integer> NO_SALE = new TreeMap<>();

  /** What is not to be had for all is taken from those who get most of it, bag by bag. */
  Optional<Order.Line> asMuchAsThereIs(Slot slot, Order.Line line) {
    Pack pack = line.pack();
    int most = pack.available().perDelivery();
    for (int packs = line.packs(); packs > most; packs--) {
      Optional<Lot> largest =
          lots.stream()
              .filter(lot -> lot.item().equals(pack.item()))
              .filter(lot -> lot.origin().equals(new Lot.Ordered(slot)))
              .filter(lot -> lot.pieces() >= pack.pieces())
              .max(Comparator.comparing(Lot::pieces));
      if (largest.isEmpty()) {
        return Optional.of(line);
      }
      takeAway(largest.get(), pack.pieces());
    }
    int packs = Math.min(line.packs(), most);
    return packs == 0
        ? Optional.empty()
        : Optional.of(
            new Order.Line(pack, packs, packs < line.packs() ? NO_SALE : line.underSale()));
  }

  private void takeAway(Lot lot, int pieces) {
    int left = lot.pieces() - pieces;
    lots.remove(lot);
    if (left > 0) {
      lots.add(lot.withPieces(left));
    }
    discards.removeIf(some -> some.lotId().equals(lot.id()));
    feedings.sort(Comparator.comparing(Feeding::day));
    for (int i = feedings.size() - 1; i >= 0 && drawn(lot.id()) > left; i--) {
      boolean eatsOfIt =
          feedings.get(i).draws().stream().anyMatch(draw -> draw.lotId().equals(lot.id()));
      if (eatsOfIt) {
        feedings.remove(i);
      }
    }
  }

  private int drawn(String lotId) {
    return feedings.stream()
        .flatMap(feeding -> feeding.draws().stream())
        .filter(draw -> draw.lotId().equals(lotId))
        .mapToInt(Feeding.Draw::pieces)
        .sum();
  }
}
