package io.frostlot.oracle;

import io.frostlot.plan.Order;
import io.frostlot.supply.Boxing;
import io.frostlot.supply.Pack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The least number of boxes for some packs: counted by totals, or by trying every way to pack. */
final class OracleBoxes {
  private final Boxing boxing;

  OracleBoxes(Boxing boxing) {
    this.boxing = boxing;
  }

  /** What one box or a whole order amounts to. */
  private record Load(long milligrams, long microlitres, long pieces) {
    static final Load NOTHING = new Load(0, 0, 0);

    Load plus(Pack pack) {
      return new Load(
          milligrams + pack.packed().grams().milligrams(),
          microlitres + pack.packed().litres().microlitres(),
          pieces + pack.pieces());
    }

    boolean fits(Boxing.Limits limits) {
      return milligrams <= limits.grams().milligrams()
          && microlitres <= limits.litres().microlitres()
          && pieces <= limits.pieces();
    }
  }

  /** Empty where the supplier does not send as many boxes as it takes. */
  Optional<Order.Boxes> pack(List<Pack> packs) {
    return boxing.way() == Boxing.Way.BY_TOTAL ? byTotal(packs) : whole(packs);
  }

  private Optional<Order.Boxes> byTotal(List<Pack> packs) {
    Load total = Load.NOTHING;
    for (Pack pack : packs) {
      total = total.plus(pack);
    }
    Boxing.Limits limits = boxing.limits();
    int boxes = 1;
    while (total.milligrams > boxes * limits.grams().milligrams()
        || total.microlitres > boxes * limits.litres().microlitres()
        || total.pieces > (long) boxes * limits.pieces()) {
      boxes++;
    }
    return boxes > boxing.mostBoxes()
        ? Optional.empty()
        : Optional.of(new Order.Boxes(boxes, List.of()));
  }

  private Optional<Order.Boxes> whole(List<Pack> packs) {
    for (int boxes = 1; boxes <= Math.min(packs.size(), boxing.mostBoxes()); boxes++) {
      List<Load> loads = new ArrayList<>();
      List<List<Pack>> contents = new ArrayList<>();
      for (int box = 0; box < boxes; box++) {
        loads.add(Load.NOTHING);
        contents.add(new ArrayList<>());
      }
      if (place(packs, 0, loads, contents)) {
        return Optional.of(
            new Order.Boxes(boxes, contents.stream().map(OracleBoxes::counted).toList()));
      }
    }
    return Optional.empty();
  }

  private boolean place(List<Pack> packs, int next, List<Load> loads, List<List<Pack>> contents) {
    if (next == packs.size()) {
      return contents.stream().noneMatch(List::isEmpty);
    }
    Pack pack = packs.get(next);
    for (int box = 0; box < loads.size(); box++) {
      Load before = loads.get(box);
      Load after = before.plus(pack);
      if (after.fits(boxing.limits())) {
        loads.set(box, after);
        contents.get(box).add(pack);
        if (place(packs, next + 1, loads, contents)) {
          return true;
        }
        loads.set(box, before);
        contents.get(box).remove(contents.get(box).size() - 1);
      }
      if (before.equals(Load.NOTHING)) {
        return false; // every further box is as empty as this one
      }
    }
    return false;
  }

  private static List<Order.Content> counted(List<Pack> packs) {
    return packs.stream()
        .distinct()
        .map(pack -> new Order.Content(pack, (int) packs.stream().filter(pack::equals).count()))
        .toList();
  }
}
