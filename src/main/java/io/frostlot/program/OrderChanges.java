package io.frostlot.program;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Changes of a {@link Trial} in which a whole order goes or comes otherwise, and meals follow. */
record OrderChanges(TrialWorld world, Shopping shopping, Mending mending, Chance chance) {
  private static final int NEAR = 12;

  /** An order is left out. */
  void close() {
    List<Integer> open = shopping.open();
    if (!open.isEmpty()) {
      int delivery = chance.oneOf(open);
      BitSet items = items(delivery);
      shopping.rows(delivery).forEach(row -> shopping.giveBack(row, shopping.count(row)));
      mending.mend(items);
    }
  }

  /** Items that come by a delivery. */
  private BitSet items(int delivery) {
    BitSet items = new BitSet();
    shopping.rows(delivery).stream()
        .filter(row -> shopping.count(row) > 0)
        .forEach(row -> items.or(shopping.items(row)));
    return items;
  }

  /** An order comes by another delivery of its supplier, one of the next before or after. */
  void shift() {
    List<Integer> open = shopping.open();
    if (open.isEmpty()) {
      return;
    }
    int from = chance.oneOf(open);
    List<Integer> others =
        IntStream.range(0, world.deliveries().all().size())
            .filter(d -> d != from)
            .filter(d -> world.deliveries().get(d).isOfSupplier(world.deliveries().get(from)))
            .boxed()
            .sorted(Comparator.comparingInt(d -> Math.abs(d - from)))
            .limit(NEAR)
            .toList();
    if (!others.isEmpty()) {
      BitSet items = items(from);
      shopping.move(from, chance.oneOf(others));
      mending.mend(items);
    }
  }
}
