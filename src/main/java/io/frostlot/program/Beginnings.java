package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Parts of a world's deliveries to make a first plan from. */
final class Beginnings {
  private static final int MAIN_DELIVERIES = 5;
  private static final int FEW_SLOTS = 14;
  private final List<Slot> slots;
  private final Map<String, List<Slot>> bySupplier = new LinkedHashMap<>();

  Beginnings(World world) {
    slots = world.slots();
    slots.forEach(s -> bySupplier.computeIfAbsent(s.supplier(), id -> new ArrayList<>()).add(s));
  }

  /** Is there any part that is not the whole? */
  boolean areParts() {
    return slots.size() > FEW_SLOTS;
  }

  /** A few deliveries of one supplier, spread over time, and the first of each other. */
  List<List<Slot>> parts() {
    List<List<Slot>> parts = new ArrayList<>();
    for (String main : bySupplier.keySet()) {
      TreeSet<Slot> part = new TreeSet<>();
      bySupplier.forEach(
          (supplier, of) -> {
            int count = Math.min(of.size(), supplier.equals(main) ? MAIN_DELIVERIES : 1);
            for (int i = 0; i < count; i++) {
              part.add(of.get(i * of.size() / count));
            }
          });
      parts.add(List.copyOf(part));
    }
    return parts;
  }
}
