package io.frostlot.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How many: whole numbers of a program worth branching on, most telling first.
 *
 * <p>Neighbouring dates are nearly alike, so that an order spread in thirds over three of them
 * costs the relaxation little, and to forbid one of the three changes nothing. The number of orders
 * of one supplier over all dates must be whole too, and there the relaxation gives way. So first
 * come the orders and the boxes of each supplier, over the whole time; then what its terms grant (a
 * discount, free shipping) and both over halves of the time, quarters, and so on; then the packs of
 * each row, and the steps of its price break that are reached; then each whole column by itself. A
 * sum gets a whole column of its own, equal to it by a row.
 */
final class Counts {
  private static final String ID = "counts";
  private static final double WHOLE = 1e-5;
  private static final int GRANTS = 1;
  private static final int PACKS = 4;
  private static final int STEPS = 5;
  private static final int SINGLE = 20;
  private final Model model;
  private final List<Count> counts = new ArrayList<>();

  /**
   * A whole number.
   *
   * @param turn counts of a lower one promise more before any was branched on
   */
  record Count(int column, int turn) {}

  /** The counts of a program; adds their columns and rows to its model. */
  Counts(Program program) {
    model = program.model();
    Map<String, List<OrderDecisions>> bySupplier = new LinkedHashMap<>();
    program
        .decisions()
        .orders()
        .values()
        .forEach(
            order ->
                bySupplier
                    .computeIfAbsent(order.supplier().id(), id -> new ArrayList<>())
                    .add(order));
    bySupplier.values().forEach(this::count);
    Set<Integer> counted = new HashSet<>();
    counts.forEach(count -> counted.add(count.column()));
    for (int i = 0; i < model.columns().size(); i++) {
      if (model.columns().get(i).kind() == Model.Kind.WHOLE && !counted.contains(i)) {
        counts.add(new Count(i, SINGLE));
      }
    }
  }

  /** Only adds them, for a solver to branch on; returns how many. */
  static int add(Program program) {
    return new Counts(program).counts.size();
  }

  /** Of the orders of one supplier, by date. */
  private void count(List<OrderDecisions> orders) {
    halved(orders.stream().map(OrderDecisions::open).toList(), 0);
    if (!orders.get(0).supplier().isPickUp()) {
      halved(orders.stream().map(OrderDecisions::boxes).toList(), 0);
    }
    Map<String, List<Var>> grants = new LinkedHashMap<>();
    Map<String, List<Var>> packs = new LinkedHashMap<>();
    Map<String, List<Var>> steps = new LinkedHashMap<>();
    for (OrderDecisions order : orders) {
      order.promotions().forEach((id, taken) -> add(grants, "taken " + id, taken));
      order.choices().forEach((id, choice) -> add(grants, id, choice));
      order.packs().forEach((pack, decision) -> add(packs, pack.id(), decision.count()));
      order.stepsReached().forEach((id, reached) -> add(steps, id, reached));
    }
    grants.values().forEach(sum -> counts.add(new Count(sum(sum).index(), GRANTS)));
    packs.values().forEach(sum -> counts.add(new Count(sum(sum).index(), PACKS)));
    steps.values().forEach(sum -> counts.add(new Count(sum(sum).index(), STEPS)));
  }

  private static void add(Map<String, List<Var>> sums, String key, Var variable) {
    sums.computeIfAbsent(key, k -> new ArrayList<>()).add(variable);
  }

  /** A sum, its two halves, theirs, and so on. */
  private Var halved(List<Var> parts, int turn) {
    Var sum = parts.get(0);
    if (parts.size() > 1) {
      int middle = parts.size() / 2;
      Var early = halved(parts.subList(0, middle), turn + 1);
      sum = sum(List.of(early, halved(parts.subList(middle, parts.size()), turn + 1)));
    }
    counts.add(new Count(sum.index(), turn));
    return sum;
  }

  private Var sum(List<Var> parts) {
    if (parts.size() == 1) {
      return parts.get(0);
    }
    Linear sum = new Linear();
    parts.forEach(part -> sum.plus(1, part));
    Var total = model.whole(0, model.most(sum));
    model.equal(ID, sum.plus(-1, total), 0);
    return total;
  }

  /** The column to branch on at a point: the most promising; empty where all are whole. */
  Optional<Var> toBranchOn(double[] point, Gains gains) {
    Gains.Promise promise = gains.promise();
    return counts.stream()
        .filter(count -> distance(point[count.column()]) > WHOLE)
        .max(Comparator.comparingDouble(count -> promise.of(count, point[count.column()])))
        .map(count -> new Var(count.column()));
  }

  private static double distance(double value) {
    return Math.abs(value - Math.rint(value));
  }
}
