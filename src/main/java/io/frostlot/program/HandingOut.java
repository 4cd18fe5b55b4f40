package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.plan.Demand;
import io.frostlot.plan.MealRun;
import io.frostlot.units.Period;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Who of a class gets which of its servings: whoever has had least beside its programme so far gets
 * the heaviest next, so that nobody gets all the light pieces.
 */
final class HandingOut {
  private final Timeline timeline;
  private final double[] point;
  private final Map<String, Double> fed = new HashMap<>();
  private final List<Serving> servings = new ArrayList<>();

  /** Some meals of a demand, served by a choice on a day. */
  record Serving(Demand demand, DemandClass.Choice choice, int meals, LocalDate day) {}

  private HandingOut(Program program, double[] point) {
    timeline = program.decisions().timeline();
    this.point = point;
  }

  /** All servings of a solution, by day. */
  static List<Serving> of(Program program, double[] point) {
    HandingOut out = new HandingOut(program, point);
    program.decisions().served().stream()
        .sorted(Comparator.comparing(HandingOut::firstDay))
        .forEach(out::handOut);
    out.servings.sort(
        Comparator.comparing(Serving::day).thenComparing(s -> s.demand().meal().id()));
    return out.servings;
  }

  private static LocalDate firstDay(Decisions.Served served) {
    return served.demandClass().members().get(0).meal().days().best();
  }

  private void handOut(Decisions.Served served) {
    List<DemandClass.Choice> choices = served.demandClass().choices();
    List<Demand> waiting = new ArrayList<>(served.demandClass().members());
    Map<Demand, Integer> open = new HashMap<>();
    List<Integer> heaviestFirst =
        IntStream.range(0, choices.size())
            .boxed()
            .sorted(Comparator.comparing(x -> -choices.get(x).option().grams().milligrams()))
            .toList();
    for (int x : heaviestFirst) {
      long toGive = Math.round(point[served.byChoice().get(x).index()]);
      while (toGive > 0 && !waiting.isEmpty()) {
        Demand next = waiting.stream().min(Comparator.comparing(this::soFar)).orElseThrow();
        int left = open.getOrDefault(next, next.meal().count());
        int meals = (int) Math.min(left, toGive);
        give(next, choices.get(x), meals);
        toGive -= meals;
        open.put(next, left - meals);
        if (left == meals) {
          waiting.remove(next);
        }
      }
    }
  }

  /** Grams had beyond the programme, in meals of this size. */
  private double soFar(Demand demand) {
    double had = fed.getOrDefault(demand.meal().eater(), 0.0);
    return had / Math.max(1e-3, MealRun.target(demand).toDouble());
  }

  private void give(Demand demand, DemandClass.Choice choice, int meals) {
    double beyond = choice.option().grams().toDouble() - MealRun.target(demand).toDouble();
    fed.merge(demand.meal().eater(), meals * beyond, Double::sum);
    servings.add(new Serving(demand, choice, meals, day(demand, choice)));
  }

  /**
   * The least late day of the meal within the choice's segment, the first where nights are charged.
   */
  private LocalDate day(Demand demand, DemandClass.Choice choice) {
    Period segment = timeline.of(choice.option().item()).days(choice.segment(), timeline);
    Meal.Days days = demand.meal().days();
    return (timeline.isHoldingCharged() ? days.first(segment) : days.nearestToBest(segment))
        .orElseThrow();
  }
}
