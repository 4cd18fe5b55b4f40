package io.frostlot.program;

import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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
  private final Map<Slot, Map<Numbered, Var>> numbers = new LinkedHashMap<>();
  private final List<Count> counts = new ArrayList<>();

  /** What one order has a number of, or may be. */
  private enum Kind {
    OPEN,
    BOXES,
    GRANT,
    PACKS,
    STEP
  }

  /** A number that every order of a supplier may have, such as the packs of one row. */
  private record Numbered(Kind kind, String id) {}

  /** One number of each of some orders, added up. */
  record Sum(Numbered number, List<Slot> slots) {
    /** Is nothing ordered there where it is zero? */
    boolean isOfOrders() {
      return number.kind == Kind.OPEN || number.kind == Kind.BOXES;
    }
  }

  /**
   * A whole number.
   *
   * @param name means the same in a program of other deliveries
   * @param sum empty for a column by itself
   * @param turn counts of a lower one promise more before any was branched on
   */
  record Count(String name, Optional<Sum> sum, Var column, int turn) {}

  /** A sum that is held between two numbers. */
  record Held(Sum sum, double least, double most) {}

  /** The counts of a program; adds their columns and rows to its model. */
  Counts(Program program) {
    model = program.model();
    Map<Slot, OrderDecisions> orders = program.decisions().orders();
    orders.forEach((slot, order) -> numbers.put(slot, numbers(order)));
    orders.keySet().stream()
        .collect(Collectors.groupingBy(Slot::supplier, LinkedHashMap::new, Collectors.toList()))
        .forEach(this::count);
    Set<Integer> counted = new HashSet<>();
    counts.forEach(count -> counted.add(count.column().index()));
    numbers.forEach(
        (slot, of) ->
            of.forEach(
                (number, column) -> {
                  if (counted.add(column.index())) {
                    Sum single = new Sum(number, List.of(slot));
                    String name = slot + " " + number;
                    counts.add(new Count(name, Optional.of(single), column, SINGLE));
                  }
                }));
    List<Model.Column> columns = model.columns();
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).kind() == Model.Kind.WHOLE && !counted.contains(i)) {
        counts.add(new Count("column " + i, Optional.empty(), new Var(i), SINGLE));
      }
    }
  }

  /** Of the orders of one supplier, by date. */
  private void count(String supplier, List<Slot> orders) {
    Map<Numbered, List<Slot>> having = new LinkedHashMap<>();
    for (Slot order : orders) {
      numbers
          .get(order)
          .keySet()
          .forEach(it -> having.computeIfAbsent(it, k -> new ArrayList<>()).add(order));
    }
    having.forEach(
        (number, slots) -> {
          Sum sum = new Sum(number, List.copyOf(slots));
          String name = supplier + " " + number;
          switch (number.kind) {
            case OPEN, BOXES -> halved(name, sum, 0);
            case GRANT -> add(name, sum, total(sum), GRANTS);
            case PACKS -> add(name, sum, total(sum), PACKS);
            case STEP -> add(name, sum, total(sum), STEPS);
          }
        });
  }

  private static Map<Numbered, Var> numbers(OrderDecisions order) {
    Map<Numbered, Var> numbers = new LinkedHashMap<>();
    numbers.put(new Numbered(Kind.OPEN, ""), order.open());
    if (!order.supplier().isPickUp()) {
      numbers.put(new Numbered(Kind.BOXES, ""), order.boxes());
    }
    order
        .promotions()
        .forEach((id, it) -> numbers.put(new Numbered(Kind.GRANT, "taken " + id), it));
    order.choices().forEach((id, it) -> numbers.put(new Numbered(Kind.GRANT, id), it));
    order
        .packs()
        .forEach((pack, it) -> numbers.put(new Numbered(Kind.PACKS, pack.id()), it.count()));
    order.stepsReached().forEach((id, it) -> numbers.put(new Numbered(Kind.STEP, id), it));
    return numbers;
  }

  /** A sum, its two halves, theirs, and so on. */
  private Var halved(String name, Sum whole, int turn) {
    List<Slot> slots = whole.slots();
    Linear halves = total(whole);
    if (slots.size() > 1) {
      halves = new Linear();
      int middle = slots.size() / 2;
      for (List<Slot> half :
          List.of(slots.subList(0, middle), slots.subList(middle, slots.size()))) {
        String named = name + " " + half.get(0).arrivesEarliest() + " of " + half.size();
        halves.plus(1, halved(named, new Sum(whole.number(), List.copyOf(half)), turn + 1));
      }
    }
    return add(name, whole, halves, turn);
  }

  /** A column that is equal to a sum, which is one already where it has one part. */
  private Var add(String name, Sum sum, Linear parts, int turn) {
    int[] variables = parts.terms().variables();
    Var column = new Var(variables[0]);
    if (variables.length > 1) {
      column = model.whole(0, model.most(parts));
      model.equal(ID, parts.plus(-1, column), 0);
    }
    counts.add(new Count(name, Optional.of(sum), column, turn));
    return column;
  }

  private Linear total(Sum sum) {
    Linear total = new Linear();
    for (Slot slot : sum.slots()) {
      Optional.ofNullable(numbers.getOrDefault(slot, Map.of()).get(sum.number()))
          .ifPresent(number -> total.plus(1, number));
    }
    return total;
  }

  /** Holds sums of a program of more deliveries: those that are not there are none. */
  List<Model.Row> rows(List<Held> held) {
    return held.stream().map(it -> Model.extra(it.least(), total(it.sum()), it.most())).toList();
  }

  /** Columns of the program, those of sums among them. */
  int columns() {
    return model.columns().size();
  }

  /** Deliveries of the program. */
  Set<Slot> slots() {
    return numbers.keySet();
  }

  /**
   * Deliveries that are not ordered where some sums are held: all of a sum that is none, and the
   * others of a sum of orders that has no more than are elsewhere in it.
   */
  static Set<Slot> closed(List<Held> held) {
    Set<Slot> closed = new HashSet<>();
    for (Held most : held) {
      if (most.sum().isOfOrders() && most.most() < 1) {
        closed.addAll(most.sum().slots());
      } else if (most.sum().number().kind == Kind.OPEN && most.most() < Double.POSITIVE_INFINITY) {
        closed.addAll(others(most, held));
      }
    }
    return closed;
  }

  private static Set<Slot> others(Held most, List<Held> held) {
    Set<Slot> others = new LinkedHashSet<>(most.sum().slots());
    double elsewhere = 0;
    List<Held> smallest = new ArrayList<>(held);
    smallest.sort(Comparator.comparingInt(it -> it.sum().slots().size()));
    for (Held some : smallest) {
      if (some.least() >= 1 && some.sum().isOfOrders() && others.containsAll(some.sum().slots())) {
        elsewhere += some.sum().number().kind == Kind.OPEN ? some.least() : 1;
        some.sum().slots().forEach(others::remove);
      }
    }
    return elsewhere < most.most() ? Set.of() : others;
  }

  /** What to branch on at a point: the most promising; empty where all are whole. */
  Optional<Count> toBranchOn(double[] point, Gains gains) {
    Gains.Promise promise = gains.promise();
    return counts.stream()
        .filter(count -> distance(point[count.column().index()]) > WHOLE)
        .max(Comparator.comparingDouble(count -> promise.of(count, point[count.column().index()])));
  }

  private static double distance(double value) {
    return Math.abs(value - Math.rint(value));
  }
}
