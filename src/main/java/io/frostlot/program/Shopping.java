package io.frostlot.program;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Packs of a {@link Trial}: bought and put where there is room, or given back. */
final class Shopping {
  private static final double BETTER = 1e-6;
  private static final int MOST_TRIED = 6;

  /** Money a day: of two freezers with room, one in which it keeps longer. */
  private static final double LASTING = 1e-3;

  private final TrialPlan plan;
  private final Trial trial;
  private final TrialWorld world;
  private final Refilling refilling;
  private final Chance chance;

  /** A row of packs that a delivery may bring. */
  record Row(int delivery, int number) {}

  Shopping(TrialPlan plan, TrialWorld world, Refilling refilling, Chance chance) {
    this.plan = plan;
    this.world = world;
    this.refilling = refilling;
    this.chance = chance;
    trial = plan.trial();
  }

  private Bag bag(Row row) {
    return world.deliveries().get(row.delivery()).rows().get(row.number());
  }

  /** Items of its packs. */
  BitSet items(Row row) {
    return world.deliveries().get(row.delivery()).items().get(row.number());
  }

  /** Deliveries by which something comes. */
  List<Integer> open() {
    return trial.open();
  }

  List<Row> rows(int delivery) {
    return IntStream.range(0, world.deliveries().get(delivery).rows().size())
        .mapToObj(row -> new Row(delivery, row))
        .toList();
  }

  /** The same pack of the same delivery for others. */
  List<Row> alike(Row row) {
    int[] packOf = world.deliveries().get(row.delivery()).packOf();
    return rows(row.delivery()).stream()
        .filter(other -> packOf[other.number()] == packOf[row.number()] && !other.equals(row))
        .toList();
  }

  /** All of deliveries by which something comes. */
  List<Row> ofOpen() {
    return open().stream().flatMap(d -> rows(d).stream()).toList();
  }

  /** All of which something is bought. */
  List<Row> bought() {
    return ofOpen().stream().filter(it -> count(it) > 0).toList();
  }

  int count(Row row) {
    return trial.packs(row.delivery(), row.number());
  }

  private boolean mayBuy(Row row) {
    return count(row) < world.deliveries().get(row.delivery()).most()[row.number()]
        && (trial.isOpen(row.delivery()) || open().size() < world.world().mostOrders());
  }

  /** Buys a pack and puts it where that weighs least; false where it cannot be had. */
  boolean buy(Row row) {
    if (!mayBuy(row)) {
      return false;
    }
    int begin = trial.mark();
    double before = refilling.weight();
    trial.buy(row.delivery(), row.number(), 1);
    refilling.weigh();
    for (Bag.Part part : bag(row).parts()) {
      int item = part.ware();
      Optional<Integer> batch =
          refilling.isPossible() ? bestBatch(row, item, part.pieces()) : Optional.empty();
      if (batch.isEmpty()) {
        refilling.backTo(begin, before);
        return false;
      }
      trial.put(item, batch.get(), part.pieces());
      refilling.weigh();
    }
    return true;
  }

  private Optional<Integer> bestBatch(Row row, int item, int pieces) {
    Optional<Integer> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    for (int batch : plan.batches(row.delivery(), item)) {
      int mark = trial.mark();
      trial.put(item, batch, pieces);
      double weighs = trial.weigh() - LASTING * trial.stock(item).batch(batch).until();
      trial.backTo(mark);
      if (weighs < least) {
        least = weighs;
        best = Optional.of(batch);
      }
    }
    return best;
  }

  /** Packs are given back; who has eaten of them lacks it, see {@link #release}. */
  void giveBack(Row row, int count) {
    trial.buy(row.delivery(), row.number(), -count);
    for (Bag.Part part : bag(row).parts()) {
      int item = part.ware();
      int left = part.pieces() * count;
      List<Integer> batches = chance.shuffled(plan.batches(row.delivery(), item));
      for (int batch : batches) {
        int taken = Math.min(left, trial.stock(item).pieces(batch));
        trial.put(item, batch, -taken);
        left -= taken;
      }
    }
  }

  /** The pieces of a pack lie in another freezer. */
  void restow(Row row) {
    for (Bag.Part part : bag(row).parts()) {
      int item = part.ware();
      List<Integer> batches = chance.shuffled(plan.batches(row.delivery(), item));
      int from = batches.get(0);
      int pieces = Math.min(part.pieces(), trial.stock(item).pieces(from));
      trial.put(item, from, -pieces);
      trial.put(item, batches.get(batches.size() - 1), pieces);
    }
  }

  /** The same packs by another delivery of the supplier, as far as they can be had there. */
  void move(int from, int to) {
    List<Bag> there = world.deliveries().get(to).rows();
    for (Row row : rows(from)) {
      int count = count(row);
      giveBack(row, count);
      int number = there.indexOf(bag(row));
      for (int n = 0; number >= 0 && n < count; n++) {
        putAnywhere(new Row(to, number));
      }
    }
  }

  private void putAnywhere(Row row) {
    if (mayBuy(row)) {
      trial.buy(row.delivery(), row.number(), 1);
      for (Bag.Part part : bag(row).parts()) {
        int item = part.ware();
        trial.put(item, chance.oneOf(plan.batches(row.delivery(), item)), part.pieces());
      }
    }
  }

  /** Who is left without where there are too few pieces. */
  List<Integer> release(BitSet items) {
    List<Integer> lost = new ArrayList<>();
    for (int item : items.stream().toArray()) {
      for (int day = trial.lackingOn(item); day >= 0; day = trial.lackingOn(item)) {
        int[] eaters = trial.servings().eaters(item, day);
        int dish = eaters[chance.below(eaters.length)];
        trial.serve(dish, -1);
        lost.add(dish);
      }
    }
    refilling.weigh();
    return lost;
  }

  /** Rows that could feed a dish, of some deliveries. */
  List<Row> feeding(int dish, List<Integer> deliveries) {
    List<Menu.Way> ways = world.menu().dishes().get(dish).ways();
    BitSet items = world.menu().dishes().get(dish).items();
    int last = ways.isEmpty() ? -1 : ways.get(ways.size() - 1).day();
    return deliveries.stream()
        .filter(d -> world.deliveries().get(d).usableFrom() <= last)
        .flatMap(d -> rows(d).stream())
        .filter(row -> items(row).intersects(items))
        .toList();
  }

  /** Buys the pack that helps most, if any does, with all others that it would feed. */
  void buyFor(int dish, List<Integer> lost) {
    int mark = trial.mark();
    double before = refilling.weight();
    double least = before - BETTER;
    Optional<Row> best = Optional.empty();
    for (Row row : chance.some(MOST_TRIED, feeding(dish, open()))) {
      if (buy(row)) {
        refillUnserved(lost);
        if (refilling.weight() < least) {
          least = refilling.weight();
          best = Optional.of(row);
        }
        refilling.backTo(mark, before);
      }
    }
    if (best.isPresent() && buy(best.get())) {
      refillUnserved(lost);
    }
  }

  private void refillUnserved(List<Integer> lost) {
    refilling.refill(lost.stream().filter(dish -> !trial.isServed(dish)).toList());
  }
}
