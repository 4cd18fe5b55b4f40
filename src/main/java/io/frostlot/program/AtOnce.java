package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;

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
    return plan(deliveries, orders -> new Promoted(world).of(orders, promotions))
        .or(() -> planWithoutPromotions(deliveries));
  }

  /** The same, sooner. */
  Optional<Answer.Judged> planWithoutPromotions(Collection<Slot> deliveries) {
    return plan(deliveries, orders -> orders);
  }

  private Optional<Answer.Judged> plan(
      Collection<Slot> deliveries, UnaryOperator<List<Order>> promoted) {
    ByDelivery days = follow(deliveries);
    if (!days.fits()) {
      return Optional.empty();
    }
    List<Feeding> feedings = AmongAlike.of(days.mouths().served());
    return Engine.judge(
        world, new Plan(promoted.apply(days.orders()), days.lots(), feedings, days.discards()));
  }
}
