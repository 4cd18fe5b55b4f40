package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Parts of a world's deliveries to make a first plan from. */
final class Beginnings {
  private static final List<Integer> MAIN_DELIVERIES = List.of(5, 8);
  private static final int FEW_SLOTS = 14;
  private static final double HALF = 0.5;
  private static final List<Double> FACTORS = List.of(1.0, 1.5, 2.0, 3.0);
  private final World world;
  private final List<Slot> slots;
  private final Map<List<Slot>, List<Slot>> guesses = new HashMap<>();
  private final Map<String, List<Slot>> bySupplier = new LinkedHashMap<>();

  Beginnings(World world) {
    this.world = world;
    slots = world.slots();
    slots.forEach(s -> bySupplier.computeIfAbsent(s.supplier(), id -> new ArrayList<>()).add(s));
  }

  /** Is there any part that is not the whole? */
  boolean areParts() {
    return slots.size() > FEW_SLOTS;
  }

  /** Some deliveries of one supplier, spread over time, and a few of each other. */
  List<List<Slot>> parts() {
    return MAIN_DELIVERIES.stream()
        .flatMap(most -> bySupplier.keySet().stream().map(main -> part(main, most)))
        .toList();
  }

  /** The deliveries of a part from which a first guess buys; found when first asked for. */
  List<Slot> guess(List<Slot> part) {
    return guesses.computeIfAbsent(
        part, some -> List.copyOf(new Greedy(world.withSlots(some)).deliveries()));
  }

  private List<Slot> part(String main, int most) {
    TreeSet<Slot> part = new TreeSet<>();
    bySupplier.forEach(
        (supplier, of) -> {
          int count = Math.min(of.size(), supplier.equals(main) ? most : most / 4);
          for (int i = 0; i < count; i++) {
            part.add(of.get(i * of.size() / count));
          }
        });
    return List.copyOf(part);
  }

  /**
   * Sets of about as many deliveries of each supplier as the relaxation has orders in all, or some
   * more, spread over time as it spreads them.
   */
  List<List<Slot>> spread(Program coarse, Weights weights, Scip.Budget budget) {
    Model model = coarse.model();
    Optional<Relaxation.End> end =
        Relaxation.minimise(model, weights.objective(model), List.of(), budget.milliseconds());
    return end.map(Relaxation.End::point).stream()
        .flatMap(point -> FACTORS.stream().map(factor -> spread(coarse, point, factor)))
        .toList();
  }

  private static List<Slot> spread(Program coarse, double[] point, double factor) {
    List<Slot> part = new ArrayList<>();
    Map<String, Double> owed = new HashMap<>();
    coarse
        .decisions()
        .orders()
        .forEach(
            (slot, order) -> {
              double orders = factor * point[order.open().index()];
              double sum = owed.merge(slot.supplier(), orders, Double::sum);
              if (sum >= HALF) {
                part.add(slot);
                owed.merge(slot.supplier(), -1.0, Double::sum);
              }
            });
    return part;
  }
}
