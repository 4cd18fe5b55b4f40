package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * A local search over sets of deliveries to order from: one moved to another date, replaced by one
 * of another supplier, left out or added. Each set seen has a cheap value, that of a linear
 * relaxation with all its orders placed; the most promising is looked at more closely, and solved
 * as a program where it is still that. The same seed sees the same sets.
 */
final class OrderSets {
  private static final long SEED = 20_310_106;
  private static final int TRIES = 40;

  /** A set next to which some were looked at before counts as so much dearer. */
  private static final double DEARER = 0.002;

  private final NearbySets nearby;
  private final Values values;
  private final Map<Set<Slot>, Seen> seen = new HashMap<>();
  private final Chance chance = Chance.of(SEED);

  /** What sets come to when solved above what they promised. */
  private final Usual gaps = new Usual();

  /** What sets promise at a closer look above what they did before. */
  private final Usual lifts = new Usual();

  /** What a set may come to. */
  interface Values {
    /** The cheap value; infinite where there is no plan. */
    double relaxed(Collection<Slot> slots);

    /** The same at a closer look; empty where there is none. */
    OptionalDouble closer(Collection<Slot> slots);

    /** Without a closer look. */
    static Values only(ToDoubleFunction<Collection<Slot>> relaxed) {
      return new Values() {
        @Override
        public double relaxed(Collection<Slot> slots) {
          return relaxed.applyAsDouble(slots);
        }

        @Override
        public OptionalDouble closer(Collection<Slot> slots) {
          return OptionalDouble.empty();
        }
      };
    }
  }

  /** A set and its cheap value. */
  record Promise(SortedSet<Slot> slots, double value) {}

  private static final class Seen {
    private final SortedSet<Slot> slots;
    private final double relaxed;
    private double closer = Double.NaN;
    private boolean isLookedAt;
    private double solved = Double.NaN;
    private boolean isLarger;
    private int expanded;
    private Iterator<SortedSet<Slot>> beside = Collections.emptyIterator();

    Seen(Collection<Slot> slots, double relaxed) {
      this.slots = Collections.unmodifiableSortedSet(new TreeSet<>(slots));
      this.relaxed = relaxed;
    }

    boolean isSolved() {
      return !Double.isNaN(solved);
    }

    /** About the least that it may come to. */
    double least() {
      return Double.isNaN(closer) ? relaxed : closer;
    }
  }

  /** No sets yet. */
  OrderSets(World world, Values values) {
    this.values = values;
    nearby = new NearbySets(world);
  }

  /** Looks at a set; false where it was seen before or is empty. */
  boolean look(Collection<Slot> slots) {
    Set<Slot> key = Set.copyOf(slots);
    if (key.isEmpty() || seen.containsKey(key)) {
      return false;
    }
    seen.put(key, new Seen(slots, values.relaxed(slots)));
    return true;
  }

  /** Sets not solved yet may be looked at again, those next to the others soon. */
  void forgetUnsolved() {
    seen.values().removeIf(set -> !set.isSolved());
    seen.values().forEach(set -> set.expanded = 0);
  }

  /** The set that promises most among those not solved yet, if it may come below a value. */
  Optional<SortedSet<Slot>> nextToSolve(double below) {
    Optional<Seen> next = mostPromising(below);
    boolean isFirst = seen.values().stream().noneMatch(Seen::isSolved);
    while (!isFirst && next.filter(set -> !set.isLookedAt).isPresent()) {
      lookCloser(next.get());
      next = mostPromising(below);
    }
    return next.map(set -> set.slots);
  }

  private void lookCloser(Seen set) {
    set.isLookedAt = true;
    values
        .closer(set.slots)
        .ifPresent(
            value -> {
              set.closer = Math.max(set.relaxed, value);
              lifts.add(set.closer - set.relaxed);
            });
  }

  private Optional<Seen> mostPromising(double below) {
    double little = lifts.lowerQuartile();
    double usual = lifts.median();
    return seen.values().stream()
        .filter(set -> !set.isSolved() && set.least() < below)
        .min(
            byValue(
                set ->
                    Double.isNaN(set.closer)
                        ? set.relaxed + (set.isLookedAt ? usual : little)
                        : set.closer));
  }

  /** Sets that promise most to the cheap value, which is with them, the best first. */
  List<Promise> promising(int most) {
    return seen.values().stream()
        .filter(set -> set.relaxed < Double.POSITIVE_INFINITY)
        .sorted(byValue(set -> set.relaxed))
        .limit(most)
        .map(set -> new Promise(set.slots, set.relaxed))
        .toList();
  }

  /** The one of some sets that promises most among those not solved yet. */
  Optional<SortedSet<Slot>> nextToSolve(Collection<Set<Slot>> some) {
    return some.stream()
        .map(slots -> seen.get(Set.copyOf(slots)))
        .filter(set -> set != null && !set.isSolved())
        .min(byValue(Seen::least))
        .map(set -> set.slots);
  }

  /**
   * Remembers what the program of a set came to.
   *
   * @param used those of its deliveries that the plan found has: where they are fewer, it is they,
   *     and what lies next to them, that are worth a look
   */
  void solved(Collection<Slot> slots, double value, Collection<Slot> used) {
    solved(slots, value);
    if (used.size() < slots.size()) {
      Optional.ofNullable(seen.get(Set.copyOf(slots))).ifPresent(set -> set.isLarger = true);
      look(used);
    }
  }

  private void solved(Collection<Slot> slots, double value) {
    look(slots);
    Seen set = seen.get(Set.copyOf(slots));
    if (set != null && !set.isSolved()) {
      set.solved = value;
      gaps.add(value - set.relaxed);
    } else if (set != null) {
      set.solved = Math.min(value, set.solved);
    }
  }

  /** Looks at some sets next to one of the best; did one of them come out lowest of all? */
  boolean expand(int count) {
    double before = lowest();
    double gap = gaps.median();
    double dearer = DEARER * (lowest() + gap);
    Optional<Seen> from =
        seen.values().stream()
            .filter(set -> set.relaxed < Double.POSITIVE_INFINITY && !set.isLarger)
            .min(
                byValue(
                    set ->
                        set.expanded * dearer + (set.isSolved() ? set.solved : set.relaxed + gap)));
    if (from.isEmpty()) {
      return false;
    }
    lookBeside(from.get(), count);
    return lowest() < before;
  }

  private void lookBeside(Seen from, int count) {
    if (from.expanded++ == 0) {
      from.beside = nearby.of(from.slots, chance).iterator();
    }
    int found = 0;
    for (int tries = 0; found < count && (from.beside.hasNext() || tries < TRIES); ) {
      boolean isNext = from.beside.hasNext();
      tries += isNext ? 0 : 1;
      boolean isNew = look(isNext ? from.beside.next() : nearby.withOneMore(from.slots, chance));
      found += isNew ? 1 : 0;
    }
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
}
