package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * A local search over sets of deliveries to order from: one moved to another date, replaced by one
 * of another supplier, left out or added. Each set seen has a cheap value, that of a linear
 * relaxation with all its orders placed; the most promising is then solved as a program. The same
 * seed sees the same sets.
 */
final class OrderSets {
  private static final int[] SHIFTS = {1, 2, 4, 8};
  private static final int TRIES = 40;
  private final Map<String, List<Slot>> bySupplier = new TreeMap<>();
  private final ToDoubleFunction<Collection<Slot>> relaxed;
  private final Map<Set<Slot>, Seen> seen = new HashMap<>();
  private final Random random = new Random(20_310_106);
  private double gaps;
  private int solved;

  private static final class Seen {
    private final SortedSet<Slot> slots;
    private final double relaxed;
    private double solved = Double.NaN;
    private int expanded;

    Seen(Collection<Slot> slots, double relaxed) {
      this.slots = Collections.unmodifiableSortedSet(new TreeSet<>(slots));
      this.relaxed = relaxed;
    }

    boolean isSolved() {
      return !Double.isNaN(solved);
    }
  }

  /**
   * No sets yet.
   *
   * @param relaxed the cheap value of a set
   */
  OrderSets(World world, ToDoubleFunction<Collection<Slot>> relaxed) {
    this.relaxed = relaxed;
    for (Slot slot : world.slots()) {
      bySupplier.computeIfAbsent(slot.supplier(), id -> new ArrayList<>()).add(slot);
    }
  }

  /** Looks at a set; false where it was seen before or is empty. */
  boolean look(Collection<Slot> slots) {
    Set<Slot> key = Set.copyOf(slots);
    if (key.isEmpty() || seen.containsKey(key)) {
      return false;
    }
    seen.put(key, new Seen(slots, relaxed.applyAsDouble(slots)));
    return true;
  }

  /** Sets not solved yet may be looked at again. */
  void forgetUnsolved() {
    seen.values().removeIf(set -> !set.isSolved());
  }

  /** The set that promises most among those not solved yet, if it may come below a value. */
  Optional<SortedSet<Slot>> nextToSolve(double below) {
    return seen.values().stream()
        .filter(set -> !set.isSolved() && set.relaxed < below)
        .min(byValue(set -> set.relaxed))
        .map(set -> set.slots);
  }

  /** The one of some sets that promises most among those not solved yet. */
  Optional<SortedSet<Slot>> nextToSolve(Collection<Set<Slot>> some) {
    return some.stream()
        .map(slots -> seen.get(Set.copyOf(slots)))
        .filter(set -> set != null && !set.isSolved())
        .min(byValue(set -> set.relaxed))
        .map(set -> set.slots);
  }

  /** Remembers what the program of a set came to. */
  void solved(Collection<Slot> slots, double value) {
    look(slots);
    Seen set = seen.get(Set.copyOf(slots));
    if (set != null && !set.isSolved()) {
      set.solved = value;
      if (value < Double.POSITIVE_INFINITY) {
        gaps += value - set.relaxed;
        solved++;
      }
    }
  }

  /** Looks at some sets next to one of the best; did one of them come out lowest of all? */
  boolean expand(int count) {
    double before = lowest();
    double gap = solved == 0 ? 0 : gaps / solved;
    Optional<Seen> from =
        seen.values().stream()
            .filter(set -> set.relaxed < Double.POSITIVE_INFINITY)
            .min(byValue(set -> set.expanded + (set.isSolved() ? set.solved : set.relaxed + gap)));
    if (from.isEmpty()) {
      return false;
    }
    from.get().expanded++;
    int found = 0;
    for (int tries = 0; tries < TRIES && found < count; tries++) {
      found += look(beside(from.get().slots)) ? 1 : 0;
    }
    return lowest() < before;
  }

  private static Comparator<Seen> byValue(ToDoubleFunction<Seen> value) {
    return Comparator.comparingDouble(value).thenComparing(set -> set.slots.toString());
  }

  private double lowest() {
    return seen.values().stream()
        .mapToDouble(set -> set.relaxed)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private SortedSet<Slot> beside(SortedSet<Slot> slots) {
    SortedSet<Slot> other = new TreeSet<>(slots);
    List<Slot> all = List.copyOf(slots);
    Slot one = all.get(random.nextInt(all.size()));
    switch (random.nextInt(6)) {
      case 0 -> other.remove(one);
      case 1 -> other.add(any());
      case 2 -> {
        other.remove(one);
        other.add(sameTime(one));
      }
      default -> {
        other.remove(one);
        other.add(shifted(one));
      }
    }
    return other;
  }

  private Slot any() {
    return anyOf(List.copyOf(bySupplier.values()));
  }

  private Slot anyOf(List<List<Slot>> suppliers) {
    List<Slot> of = suppliers.get(random.nextInt(suppliers.size()));
    return of.get(random.nextInt(of.size()));
  }

  /** The delivery of some supplier that comes nearest in time. */
  private Slot sameTime(Slot slot) {
    long day = slot.arrivesEarliest().toEpochDay();
    List<List<Slot>> suppliers = List.copyOf(bySupplier.values());
    return suppliers.get(random.nextInt(suppliers.size())).stream()
        .min(
            Comparator.comparingLong(other -> Math.abs(other.arrivesEarliest().toEpochDay() - day)))
        .orElse(slot);
  }

  private Slot shifted(Slot slot) {
    List<Slot> of = bySupplier.get(slot.supplier());
    int by = SHIFTS[random.nextInt(SHIFTS.length)] * (random.nextBoolean() ? 1 : -1);
    return of.get(Math.max(0, Math.min(of.size() - 1, of.indexOf(slot) + by)));
  }
}
