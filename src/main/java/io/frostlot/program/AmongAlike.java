package io.frostlot.program;

import io.frostlot.plan.Alike;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Demands;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.MealRun;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Who of those that are alike gets what some of them are served: whoever has had least beside its
 * programme so far gets the heaviest, so that nobody gets all the light pieces.
 */
final class AmongAlike {
  private static final Comparator<Feeding> BY_DAY =
      Comparator.comparing(Feeding::day).thenComparing(Feeding::mealId);
  private final Map<String, Double> beyond = new HashMap<>();
  private final List<Feeding> feedings = new ArrayList<>();

  private AmongAlike() {}

  /** A demand and how many of its meals are not served yet. */
  private static final class Waiting {
    private final Demand demand;
    private final double soFar;
    private int meals;

    Waiting(Demand demand, double soFar) {
      this.demand = demand;
      this.soFar = soFar;
      meals = demand.meal().count();
    }
  }

  /** Each meal's own, by day and meal. */
  static List<Feeding> of(Collection<Mouths.Served> served) {
    IdentityHashMap<Alike, List<Mouths.Served>> byAlike = new IdentityHashMap<>();
    served.forEach(it -> byAlike.computeIfAbsent(it.alike(), a -> new ArrayList<>()).add(it));
    AmongAlike among = new AmongAlike();
    byAlike.keySet().stream()
        .sorted(Comparator.comparing(Alike::first, Demands.CANONICAL))
        .forEach(alike -> among.handOut(alike, byAlike.get(alike)));
    among.feedings.sort(BY_DAY);
    return among.feedings;
  }

  private void handOut(Alike alike, List<Mouths.Served> served) {
    Deque<Waiting> waiting = new ArrayDeque<>();
    alike.members().stream()
        .map(demand -> new Waiting(demand, soFar(demand)))
        .sorted(Comparator.comparingDouble(it -> it.soFar))
        .forEach(waiting::add);
    served.sort(Comparator.comparing(it -> -it.option().grams().milligrams()));
    for (Mouths.Served some : served) {
      Deque<Feeding.Draw> draws = new ArrayDeque<>(some.draws());
      int left = some.meals();
      while (left > 0) {
        Waiting next = waiting.getFirst();
        int meals = Math.min(left, next.meals);
        give(next.demand, some, meals, take(draws, meals * some.option().pieces()));
        left -= meals;
        next.meals -= meals;
        if (next.meals == 0) {
          waiting.removeFirst();
        }
      }
    }
  }

  /** Grams had beyond the programme, in meals of this size. */
  private double soFar(Demand demand) {
    double had = beyond.getOrDefault(demand.meal().eater(), 0.0);
    return had / Math.max(1e-3, MealRun.target(demand).toDouble());
  }

  private void give(Demand demand, Mouths.Served some, int meals, List<Feeding.Draw> draws) {
    double more = some.option().grams().toDouble() - MealRun.target(demand).toDouble();
    beyond.merge(demand.meal().eater(), meals * more, Double::sum);
    feedings.add(
        new Feeding(demand.meal().id(), Timeline.date(some.day()), some.option(), meals, draws));
  }

  private static List<Feeding.Draw> take(Deque<Feeding.Draw> from, int pieces) {
    List<Feeding.Draw> taken = new ArrayList<>(1);
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
