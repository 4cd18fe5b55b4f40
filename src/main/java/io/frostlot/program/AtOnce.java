package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Plans of a world of many animals without a program of it: {@link ByDelivery}, handed out to each,
 * then judged and replayed like any other.
 */
final class AtOnce {
  private static final long PROMOTIONS_MILLIS = 2000;
  private final World world;
  private final Weights weights;
  private final Scip.Budget promotions;

  /**
   * Plans that take about as long as it takes to read the world.
   *
   * @param rounds where work is counted, for the same plans every time
   */
  AtOnce(World world, OptionalInt rounds) {
    this.world = world;
    promotions = Scip.Budget.of(PROMOTIONS_MILLIS, rounds);
    weights = Weights.of(world);
  }

  /** Is there one keeper, who is free to order what and as often as it is worth? */
  static boolean suits(World world) {
    return world.joint().equals(Joint.ALONE)
        && world.pledges().isEmpty()
        && world.mostOrders() == World.ANY_NUMBER;
  }

  /** About what a plan of some deliveries comes to; infinite where there is none. */
  double value(Collection<Slot> deliveries) {
    ByDelivery days = follow(deliveries);
    Mouths mouths = days.mouths();
    return days.fits()
        ? weights.beforeMoney(mouths.unmetMust(), mouths.unmetOther(), days.shortfall())
            + days.money()
        : Double.POSITIVE_INFINITY;
  }

  private ByDelivery follow(Collection<Slot> deliveries) {
    return new ByDelivery(world, deliveries.stream().sorted().toList()).run();
  }

  /** A plan of some deliveries; empty where what was made breaks a rule. */
  Optional<Answer.Judged> plan(Collection<Slot> deliveries) {
    return judged(deliveries, orders -> List.of(new Promoted(world).of(orders, promotions), orders))
        .min(Comparator.comparing(Answer.Judged::standing))
        .or(() -> planSoon(deliveries));
  }

  /** The same, each order under the promotions that seem best for it alone, or under none. */
  Optional<Answer.Judged> planSoon(Collection<Slot> deliveries) {
    return judged(deliveries, orders -> List.of(orders, withoutPromotions(orders))).findFirst();
  }

  private Stream<Answer.Judged> judged(
      Collection<Slot> deliveries, Function<List<Order>, List<List<Order>>> ways) {
    ByDelivery days = follow(deliveries);
    if (!days.fits()) {
      return Stream.empty();
    }
    List<Feeding> feedings = AmongAlike.of(days.mouths().served());
    return ways.apply(days.orders()).stream()
        .distinct()
        .map(orders -> new Plan(orders, days.lots(), feedings, days.discards()))
        .flatMap(plan -> Engine.judge(world, plan).stream());
  }

  private static List<Order> withoutPromotions(List<Order> orders) {
    return orders.stream()
        .map(
            order ->
                new Order(
                    order.slot(),
                    order.lines().stream()
                        .map(line -> new Order.Line(line.pack(), line.packs(), new TreeMap<>()))
                        .toList(),
                    Set.of(),
                    order.boxes()))
        .toList();
  }
}
