package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Sets of deliveries next to one: one of them moved to another date, replaced by one of another
 * supplier, left out or added.
 */
final class NearbySets {
  private static final int[] NEAR = {1, 2};
  private static final int[] FAR = {4, 8};
  private final Map<String, List<Slot>> bySupplier = new TreeMap<>();

  NearbySets(World world) {
    for (Slot slot : world.slots()) {
      bySupplier.computeIfAbsent(slot.supplier(), id -> new ArrayList<>()).add(slot);
    }
  }

  /**
   * All with one moved, replaced or left out: in any order, but two moved by little before each
   * other.
   */
  List<SortedSet<Slot>> of(SortedSet<Slot> slots, Chance chance) {
    Set<SortedSet<Slot>> little = new LinkedHashSet<>();
    for (int by : NEAR) {
      little.addAll(chance.shuffled(shifted(slots, by)));
    }
    little.remove(slots);
    Set<SortedSet<Slot>> others = new LinkedHashSet<>();
    for (int by : FAR) {
      others.addAll(shifted(slots, by));
    }
    for (Slot slot : slots) {
      others.add(without(slots, slot));
      bySupplier.values().forEach(of -> others.add(replaced(slots, slot, sameTime(slot, of))));
    }
    others.removeAll(little);
    others.removeAll(Set.of(slots, new TreeSet<Slot>()));
    return twoAndOne(List.copyOf(little), chance.shuffled(others));
  }

  private static <T> List<T> twoAndOne(List<T> twos, List<T> ones) {
    Iterator<T> two = twos.iterator();
    Iterator<T> one = ones.iterator();
    List<T> all = new ArrayList<>();
    while (two.hasNext() || one.hasNext()) {
      for (Iterator<T> next : List.of(two, two, one)) {
        if (next.hasNext()) {
          all.add(next.next());
        }
      }
    }
    return all;
  }

  /** With any other added. */
  SortedSet<Slot> withOneMore(SortedSet<Slot> slots, Chance chance) {
    SortedSet<Slot> other = new TreeSet<>(slots);
    other.add(chance.oneOf(chance.oneOf(List.copyOf(bySupplier.values()))));
    return other;
  }

  /** Each of them moved, in both directions. */
  private Set<SortedSet<Slot>> shifted(SortedSet<Slot> slots, int by) {
    Set<SortedSet<Slot>> shifted = new LinkedHashSet<>();
    for (Slot slot : slots) {
      shifted.add(replaced(slots, slot, shifted(slot, by)));
      shifted.add(replaced(slots, slot, shifted(slot, -by)));
    }
    return shifted;
  }

  private static SortedSet<Slot> without(SortedSet<Slot> slots, Slot one) {
    SortedSet<Slot> other = new TreeSet<>(slots);
    other.remove(one);
    return other;
  }

  private static SortedSet<Slot> replaced(SortedSet<Slot> slots, Slot one, Slot by) {
    SortedSet<Slot> other = without(slots, one);
    other.add(by);
    return other;
  }

  /** Of those of one supplier that which comes nearest in time. */
  private static Slot sameTime(Slot slot, List<Slot> of) {
    long day = slot.arrivesEarliest().toEpochDay();
    return of.stream()
        .min(
            Comparator.comparingLong(other -> Math.abs(other.arrivesEarliest().toEpochDay() - day)))
        .orElse(slot);
  }

  private Slot shifted(Slot slot, int by) {
    List<Slot> of = bySupplier.getOrDefault(slot.supplier(), List.of(slot));
    return of.get(Math.max(0, Math.min(of.size() - 1, of.indexOf(slot) + by)));
  }
}
