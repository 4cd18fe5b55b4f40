package io.frostlot.program;

import io.frostlot.forecast.Meal;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.Demand;
import io.frostlot.plan.MealRun;
import io.frostlot.units.Period;
import io.frostlot.units.SizeBand;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Who of a class gets which of its servings: whoever has had least beside its programme so far gets
 * the heaviest next, so that nobody gets all the light pieces. Before that an animal that seldom
 * changes keeps to its size, and one whose late meals are limited has the fewest of them.
 */
final class HandingOut {
  private final Timeline timeline;
  private final double[] point;
  private final Map<String, Double> fed = new HashMap<>();
  private final Map<String, Set<SizeBand>> keeping = new HashMap<>();
  private final Map<String, Long> daysLate = new HashMap<>();
  private final List<Serving> servings = new ArrayList<>();

  /** Some meals of a demand, served by a choice on a day. */
  record Serving(Demand demand, DemandClass.Choice choice, int meals, LocalDate day) {}

  private HandingOut(Program program, double[] point) {
    timeline = program.decisions().timeline();
    this.point = point;
    for (Animal animal : program.decisions().world().scenario().collection().animals()) {
      Plate.Change change = animal.diet().plate().change();
      if (change instanceof Plate.Keep || change instanceof Plate.Seldom) {
        keeping.put(animal.name(), change.before());
      }
      if (!animal.programme().days().limits().isEmpty()) {
        daysLate.put(animal.name(), 0L);
      }
    }
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
    return served.demandClass().first().meal().days().best();
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
        DemandClass.Choice choice = choices.get(x);
        Demand next =
            waiting.stream()
                .min(
                    Comparator.comparing((Demand demand) -> hindrance(demand, choice))
                        .thenComparing(this::soFar))
                .orElseThrow();
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

  /** How little a choice suits what an animal had before. */
  private long hindrance(Demand demand, DemandClass.Choice choice) {
    String eater = demand.meal().eater();
    SizeBand band = choice.option().band();
    boolean changes = !keeping.getOrDefault(eater, Set.of(band)).contains(band);
    long late = choice.lateDays() > 0 ? daysLate.getOrDefault(eater, 0L) : 0;
    return (changes ? 1 : 0) + 2 * late;
  }

  /** Grams had beyond the programme, in meals of this size. */
  private double soFar(Demand demand) {
    double had = fed.getOrDefault(demand.meal().eater(), 0.0);
    return had / Math.max(1e-3, MealRun.target(demand).toDouble());
  }

  private void give(Demand demand, DemandClass.Choice choice, int meals) {
    double beyond = choice.option().grams().toDouble() - MealRun.target(demand).toDouble();
    String eater = demand.meal().eater();
    fed.merge(eater, meals * beyond, Double::sum);
    keeping.replace(eater, Set.of(choice.option().band()));
    daysLate.computeIfPresent(eater, (name, days) -> days + choice.lateDays());
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
