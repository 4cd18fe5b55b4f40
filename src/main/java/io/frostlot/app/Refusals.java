package io.frostlot.app;

import io.frostlot.forecast.Meal;
import io.frostlot.plan.Demand;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which meals are refused where a share of all is: from the first to the last by day, as many as
 * make up the share of those so far, rounded down. Each time it is the last meal of the eater that
 * has lost least for the meals that it had, of several the one that ate last; so the loss is spread
 * over the days and over the eaters. Of a meal that is wanted several times as many times are
 * refused.
 */
final class Refusals {
  /** Below what a share of whole meals can be off by in binary. */
  private static final double ROUNDING = 1e-9;

  private final double share;

  /** By name, who ate last comes last. */
  private final Map<String, Eater> eaters = new LinkedHashMap<>();

  private final Map<String, Integer> refused = new HashMap<>();

  private Refusals(double share) {
    this.share = share;
  }

  /**
   * What is left to be eaten.
   *
   * @param demands by day
   * @param share of all meals, 0 to 1
   */
  static List<Demand> without(List<Demand> demands, double share) {
    Refusals refusals = new Refusals(share);
    refusals.refuse(demands);
    return demands.stream()
        .flatMap(
            demand -> demand.without(refusals.refused.getOrDefault(demand.meal().id(), 0)).stream())
        .toList();
  }

  /** What one has had so far, refused or not. */
  private final class Eater {
    /** Ids of meals that are not refused, the last first. */
    private final Deque<String> taken = new ArrayDeque<>();

    private int had;

    private void eats(String mealId) {
      taken.push(mealId);
      had++;
    }

    /** Meals that it should have lost by now, less those that it has. */
    private double due() {
      return had * share - (had - taken.size());
    }
  }

  private void refuse(List<Demand> demands) {
    long meals = 0;
    for (Demand demand : demands) {
      Meal meal = demand.meal();
      for (int i = 0; i < meal.count(); i++) {
        Eater eater = eaters.getOrDefault(meal.eater(), new Eater());
        eater.eats(meal.id());
        eaters.remove(meal.eater());
        eaters.put(meal.eater(), eater);
        meals++;
        if (whole(meals) > whole(meals - 1)) {
          refuseOne();
        }
      }
    }
  }

  private double whole(long meals) {
    return Math.floor(meals * share + ROUNDING);
  }

  private void refuseOne() {
    Eater first =
        eaters.values().stream()
            .filter(eater -> !eater.taken.isEmpty())
            .reduce((one, later) -> later.due() < one.due() - ROUNDING ? one : later)
            .orElseThrow();
    refused.merge(first.taken.pop(), 1, Integer::sum);
  }
}
