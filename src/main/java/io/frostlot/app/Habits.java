package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Comparison;
import io.frostlot.plan.Difference;
import io.frostlot.plan.DueSoon;
import io.frostlot.plan.Habit;
import io.frostlot.plan.Interval;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Policy;
import io.frostlot.plan.Scenario;
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.supply.Delivery;
import io.frostlot.supply.Supplier;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What keepers do by habit, under the same rules as the plan: one order a month, month after month
 * ({@link MonthByMonth}), and the whole time from one supplier, each tried and planned as well as
 * it can be; what is better fetched at the local shops is fetched there. Meals that a habit leaves
 * unmet are counted, even where the plan must meet all.
 *
 * <p>Suppliers are those that ship, or the shops where none does. A show, on a few dates, is no
 * place to buy from the whole time. Neither side is charged for changing orders due soon.
 */
public final class Habits {
  private static final String MONTHLY =
      "one order a month, for what is needed until the next, from the supplier of least cost";

  private static final String AND_SHOPS = ", besides what is better fetched at the shop";

  /** Most months are easy: a hard one may take half of what is left. */
  private static final int MOST_PARTS = 2;

  private final Planner planner;

  public Habits(Planner planner) {
    this.planner = planner;
  }

  /**
   * The plan shown beside each habit.
   *
   * @param limits for all of them together; what one leaves of its share the next ones have
   * @param watch once it says stop, what is not worked out is not wanted
   */
  public Comparison compare(World world, Answer.WithPlan shown, Limits limits, Watch watch) {
    World free = world.withDueSoon(DueSoon.NONE);
    return world.dueSoon().isNone()
        ? compareFree(world, shown, limits, watch)
        : compareFree(free, freely(free, shown), limits, watch);
  }

  /**
   * Who orders by habit has no earlier plan to keep to; a bound of plans that have says nothing.
   */
  private static Answer.WithPlan freely(World free, Answer.WithPlan shown) {
    Answer.Judged judged = Engine.judge(free, shown.plan().plan()).orElseThrow();
    return new Answer.BestFound(judged, OptionalDouble.empty());
  }

  private Comparison compareFree(World world, Answer.WithPlan shown, Limits limits, Watch watch) {
    List<Supplier> regular = regular(world.scenario().suppliers());
    Set<String> shops = ids(world, it -> isShop(it) && !regular.contains(it));
    World lenient = bestEffort(world);
    Share share = new Share(planner, limits, watch);
    List<Habit> habits = new ArrayList<>();
    List<String> unfinished = new ArrayList<>();
    if (!regular.isEmpty()) {
      boolean only = regular.stream().allMatch(one -> isFrom(with(one, shops), shown));
      Share own = share.part(only ? 1 : 2);
      Optional<Habit> monthly =
          monthly(lenient, own)
              .map(
                  judged ->
                      habit(
                          monthly(world), lenient, judged, Interval.exactly(judged, shown.plan())));
      monthly.ifPresentOrElse(habits::add, () -> unfinished.add(monthly(world)));
    }
    for (int i = 0; i < regular.size(); i++) {
      Supplier one = regular.get(i);
      Set<String> allowed = with(one, shops);
      String says = "everything from " + one.name() + (shops.isEmpty() ? "" : AND_SHOPS);
      Optional<Answer.WithPlan> whole =
          isFrom(allowed, shown)
              ? Optional.of(shown)
              : share.plan(only(lenient, allowed), regular.size() - i);
      whole
          .filter(it -> it.bound().isPresent() || meetsAsMuch(it, shown))
          .map(it -> habit(says, lenient, it.plan(), Interval.dearer(it, shown)))
          .ifPresentOrElse(habits::add, () -> unfinished.add(says));
    }
    return new Comparison(habits, watch.stop() ? List.of() : unfinished);
  }

  /** The habit of one order a month, in words. */
  static String monthly(World world) {
    List<Supplier> regular = regular(world.scenario().suppliers());
    boolean shops =
        world.scenario().suppliers().stream().anyMatch(it -> isShop(it) && !regular.contains(it));
    return MONTHLY + (shops ? AND_SHOPS : "");
  }

  /** What one order a month comes to; empty where it is not worked out in the time given. */
  Optional<Answer.Judged> monthly(World world, Limits limits, Watch watch) {
    return monthly(bestEffort(world), new Share(planner, limits, watch));
  }

  private static Optional<Answer.Judged> monthly(World lenient, Share share) {
    List<Supplier> regular = regular(lenient.scenario().suppliers());
    Set<String> shops = ids(lenient, it -> isShop(it) && !regular.contains(it));
    return regular.isEmpty()
        ? Optional.empty()
        : new MonthByMonth(lenient, ids(lenient, regular::contains), shops)
            .follow((part, left) -> share.plan(part, Math.min(left, MOST_PARTS)));
  }

  private static Habit habit(String says, World world, Answer.Judged judged, Interval dearerBy) {
    Difference.Side side = Difference.Side.of(judged, Outcome.of(world, judged.plan()));
    return new Habit(says, side, dearerBy);
  }

  /** If not, and that is not proven, it may be for want of time and is not said of the habit. */
  private static boolean meetsAsMuch(Answer.WithPlan habit, Answer.WithPlan shown) {
    return habit.plan().standing().sameBeforeMoney(shown.plan().standing());
  }

  /** Then it is a plan of that habit too, and nothing better is looked for. */
  private static boolean isFrom(Set<String> suppliers, Answer.WithPlan shown) {
    return shown.plan().plan().orders().stream()
        .allMatch(order -> suppliers.contains(order.slot().supplier()));
  }

  private static List<Supplier> regular(List<Supplier> suppliers) {
    List<Supplier> ship = suppliers.stream().filter(it -> !it.isPickUp()).toList();
    return ship.isEmpty() ? suppliers.stream().filter(Habits::isShop).toList() : ship;
  }

  private static boolean isShop(Supplier supplier) {
    return supplier.delivery() instanceof Delivery.Shop;
  }

  private static Set<String> with(Supplier one, Set<String> shops) {
    return Stream.concat(Stream.of(one.id()), shops.stream()).collect(Collectors.toSet());
  }

  private static Set<String> ids(World world, Predicate<Supplier> which) {
    return world.scenario().suppliers().stream()
        .filter(which)
        .map(Supplier::id)
        .collect(Collectors.toSet());
  }

  private static World only(World world, Set<String> suppliers) {
    return world.withSlots(
        world.slots().stream().filter(slot -> suppliers.contains(slot.supplier())).toList());
  }

  private static World bestEffort(World world) {
    Scenario scenario = world.scenario();
    Policy policy = scenario.policy().withDemand(Policy.Demand.BEST_EFFORT);
    return world.withScenario(scenario.withPolicy(policy));
  }
}
