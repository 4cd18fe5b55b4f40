package io.frostlot.program;

import io.frostlot.plan.Alike;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.Joint;
import io.frostlot.plan.Order;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
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
    ByDelivery days = follow(deliveries);
    if (!days.fits()) {
      return Optional.empty();
    }
    List<Feeding> feedings = feedings(days.mouths().served());
    List<Order> promoted = new Promoted(world).of(days.orders(), promotions);
    return Stream.of(promoted, days.orders())
        .map(orders -> new Plan(orders, days.lots(), feedings, days.discards()))
        .flatMap(plan -> Engine.judge(world, plan).stream())
        .findFirst();
  }

  /** One after the other of those that are alike is fed. */
  private static List<Feeding> feedings(List<Mouths.Served> served) {
    IdentityHashMap<Alike, Deque<Demand>> waiting = new IdentityHashMap<>();
    Map<String, Integer> had = new HashMap<>();
    List<Feeding> feedings = new ArrayList<>();
    for (Mouths.Served some : served) {
      Deque<Demand> demands =
          waiting.computeIfAbsent(some.alike(), alike -> new ArrayDeque<>(alike.members()));
      Deque<Feeding.Draw> draws = new ArrayDeque<>(some.draws());
      int left = some.meals();
      while (left > 0) {
        Demand demand = demands.getFirst();
        String id = demand.meal().id();
        int open = demand.meal().count() - had.getOrDefault(id, 0);
        int meals = Math.min(left, open);
        feedings.add(
            new Feeding(
                id,
                Timeline.date(some.day()),
                some.option(),
                meals,
                take(draws, meals * some.option().pieces())));
        left -= meals;
        had.merge(id, meals, Integer::sum);
        if (meals == open) {
          demands.removeFirst();
        }
      }
    }
    return feedings;
  }

  private static List<Feeding.Draw> take(Deque<Feeding.Draw> from, int pieces) {
    List<Feeding.Draw> taken = new ArrayList<>();
    int need = pieces;
    while (need > 0) {
      Feeding.Draw next = from.removeFirst();
      int count = Math.min(need, next.pieces());
      taken.add(new Feeding.Draw(next.lotId(), count));
      need -= count;
      if (count < next.pieces()) {
        from.addFirst(new Feeding.Draw(next.lotId(), next.pieces() - count));
      }
    }
    return taken;
  }
}
