package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Habit;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Slot;
import io.frostlot.supply.Supplier;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What keepers do by habit, planned as well as it can be under the same rules: one order a month
 * from each supplier that ships, and everything from one supplier, each tried; gaps are filled at
 * the local shops.
 */
public final class Habits {
  private final Planner planner;

  public Habits(Planner planner) {
    this.planner = planner;
  }

  /** A way of ordering: some of the slots. */
  private record Way(String says, World world) {}

  /**
   * The habits for which a plan is found.
   *
   * @param limits for all of them together
   */
  public List<Habit> compare(World world, Answer.WithPlan shown, Limits limits, Watch watch) {
    List<Way> ways = ways(world);
    List<Habit> habits = new ArrayList<>();
    for (Way way : ways) {
      if (!watch.stop()) {
        habit(way, shown, limits.part(ways.size()), watch).ifPresent(habits::add);
      }
    }
    return habits;
  }

  private Optional<Habit> habit(Way way, Answer.WithPlan shown, Limits limits, Watch watch) {
    Answer answer = planner.plan(way.world(), limits, onlyStop(watch));
    if (!(answer instanceof Answer.WithPlan habit)) {
      return Optional.empty();
    }
    int late =
        Outcome.of(way.world(), habit.plan().plan()).late().stream()
            .mapToInt(Outcome.Late::meals)
            .sum();
    return Optional.of(
        new Habit(way.says(), habit.plan().standing(), late, Interval.dearer(habit, shown)));
  }

  /** Plans of habits are not the plan that is looked for. */
  private static Watch onlyStop(Watch watch) {
    return new Watch() {
      @Override
      public boolean stop() {
        return watch.stop();
      }

      @Override
      public void found(Answer.WithPlan best) {}
    };
  }

  private static List<Way> ways(World world) {
    List<Supplier> shipping =
        world.scenario().suppliers().stream().filter(s -> !isShop(s)).toList();
    boolean shops = shipping.size() < world.scenario().suppliers().size();
    List<Way> ways = new ArrayList<>();
    ways.add(
        new Way(
            "one order a month from a supplier, on the first day that it can be",
            only(world, firstOfMonth(world))));
    for (Supplier supplier : shipping) {
      ways.add(
          new Way(
              "everything from " + supplier.name() + (shops ? ", gaps filled at the shop" : ""),
              only(world, slot -> slot.supplier().equals(supplier.id()))));
    }
    return ways;
  }

  private static boolean isShop(Supplier supplier) {
    return supplier.delivery() instanceof Delivery.Shop;
  }

  private static World only(World world, Predicate<Slot> allowed) {
    return world.withSlots(
        world.slots().stream()
            .filter(slot -> allowed.test(slot) || isShop(world.supplier(slot.supplier())))
            .toList());
  }

  private static Predicate<Slot> firstOfMonth(World world) {
    record Month(String supplier, YearMonth month) {}

    Set<Month> seen = new HashSet<>();
    Set<Slot> first = new HashSet<>();
    world.slots().stream()
        .sorted(Comparator.comparing(Slot::ordered).thenComparing(Comparator.naturalOrder()))
        .filter(slot -> seen.add(new Month(slot.supplier(), YearMonth.from(slot.ordered()))))
        .forEach(first::add);
    return first::contains;
  }
}
