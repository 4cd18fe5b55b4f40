package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedSet;
import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;

/**
 * Finds plans of a world with so many kinds of meals that a program of it takes long: searches over
 * sets of deliveries as {@link Improving} does, but each set is valued, and made a plan, by going
 * through its days once (see {@link AtOnce}); in turns with it goes the local search.
 */
final class ManyKinds implements Runnable {
  private static final List<Integer> DELIVERIES_A_YEAR = List.of(26, 18, 12, 40, 8);
  private static final double DAYS_A_YEAR = 365;
  private static final int NEIGHBOURS = 8;
  private final World world;
  private final Best best;
  private final BooleanSupplier goesOn;
  private final OptionalInt rounds;
  private final AtOnce atOnce;
  private final LongConsumer others;
  private final Weights weights;
  private final Map<Set<Slot>, Double> values = new HashMap<>();
  private final OrderSets sets;
  private double least = Double.POSITIVE_INFINITY;

  /**
   * A search that has not begun.
   *
   * @param goesOn false once it should end
   * @param others take turns with it; told how many nanoseconds a turn took
   */
  ManyKinds(
      World world, Best best, BooleanSupplier goesOn, OptionalInt rounds, LongConsumer others) {
    this.others = others;
    this.world = world;
    this.best = best;
    this.goesOn = goesOn;
    this.rounds = rounds;
    atOnce = new AtOnce(world, rounds);
    weights = Weights.of(world);
    sets = new OrderSets(world, OrderSets.Values.only(this::value));
  }

  /** Are there so many kinds of meals, and can it be done? */
  static boolean suits(World world) {
    return Grain.isLarge(world) && AtOnce.suits(world);
  }

  private double value(Collection<Slot> deliveries) {
    double value = atOnce.value(deliveries);
    values.put(Set.copyOf(deliveries), value);
    return value;
  }

  /** Ends at once where none of the first sets becomes a plan. */
  @Override
  public void run() {
    best.plan().ifPresent(plan -> sets.look(plan.plan().slots()));
    begin();
    int most = best.plan().isEmpty() ? 0 : rounds.orElse(Integer.MAX_VALUE);
    for (int round = 0; round < most && goesOn.getAsBoolean(); round++) {
      long begun = System.nanoTime();
      if (!sets.expand(NEIGHBOURS)) {
        solveNext();
      }
      others.accept(System.nanoTime() - begun);
    }
  }

  /** Deliveries of each supplier, spread over time; a plan is shown as soon as there is one. */
  private void begin() {
    Map<String, List<Slot>> bySupplier = new LinkedHashMap<>();
    world
        .slots()
        .forEach(
            slot -> bySupplier.computeIfAbsent(slot.supplier(), id -> new ArrayList<>()).add(slot));
    double years = world.scenario().planning().days().count() / DAYS_A_YEAR;
    for (int aYear : DELIVERIES_A_YEAR) {
      for (List<Slot> slots : bySupplier.values()) {
        if (goesOn.getAsBoolean()) {
          sets.look(spread(slots, (int) Math.max(1, Math.round(aYear * years))));
        }
      }
      while (solveNext() && best.plan().isEmpty()) {
        least = Double.POSITIVE_INFINITY;
      }
    }
  }

  private static List<Slot> spread(List<Slot> slots, int count) {
    int most = Math.min(count, slots.size());
    List<Slot> some = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      some.add(slots.get((2 * i + 1) * slots.size() / (2 * most)));
    }
    return some;
  }

  /** Makes a plan of the set that promises most; false where none promises more than others did. */
  private boolean solveNext() {
    Optional<SortedSet<Slot>> next = sets.nextToSolve(least);
    if (next.isEmpty() || !goesOn.getAsBoolean()) {
      return false;
    }
    least = values.getOrDefault(Set.copyOf(next.get()), least);
    if (best.plan().isEmpty()) {
      atOnce.planSoon(next.get()).ifPresent(best::offer);
    }
    Optional<Answer.Judged> plan = atOnce.plan(next.get());
    plan.ifPresent(best::offer);
    sets.solved(
        next.get(),
        weights.of(plan),
        plan.map(some -> some.plan().slots()).orElse(List.copyOf(next.get())));
    return true;
  }
}
