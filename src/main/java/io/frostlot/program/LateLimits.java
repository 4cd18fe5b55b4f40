package io.frostlot.program;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Lateness;
import io.frostlot.plan.Books;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.MealRuns;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Over the planning days an animal has at most so many late meals, or so many days late in all.
 *
 * <p>For each animal and limit, m its planning meals and x their choices, late(x) the days after
 * the best day, or 1 where meals are counted: beyond &gt;= sum of served(m, x) x late(x) - most.
 * The sum of beyond, in meals or days, gives way before a meal does.
 */
final class LateLimits implements Tying {
  private final Map<String, List<Lateness>> limits = new TreeMap<>();
  private final Map<String, List<Demand>> tied = new TreeMap<>();

  LateLimits(World world) {
    for (Animal animal : world.scenario().collection().animals()) {
      List<Lateness> own = animal.programme().days().limits();
      if (!own.isEmpty()) {
        limits.put(animal.name(), own);
      }
    }
    if (!limits.isEmpty()) {
      tied.putAll(MealRuns.mealsByAnimal(world));
      tied.keySet().retainAll(limits.keySet());
    }
  }

  @Override
  public String id() {
    return "late-limits";
  }

  @Override
  public String says() {
    return "Late meals of "
        + limits.size()
        + (limits.size() == 1 ? " animal are" : " animals are")
        + " limited over the planning days.";
  }

  @Override
  public boolean relaxable() {
    return true;
  }

  @Override
  public Map<String, List<Demand>> tied() {
    return tied;
  }

  @Override
  public Object wish(String animal) {
    return limits.getOrDefault(animal, List.of());
  }

  @Override
  public void impose(Program program) {
    for (FedAlike alike : FedAlike.of(program, tied)) {
      for (Lateness limit : limits.get(alike.animals().get(0))) {
        Linear late = new Linear();
        for (Decisions.Served served : alike.meals()) {
          for (int x = 0; x < served.byChoice().size(); x++) {
            long days = served.demandClass().choices().get(x).lateDays();
            late.plus((double) limit.of(days), served.byChoice().get(x));
          }
        }
        Var beyond = program.model().real(0, Model.INFINITY);
        program.model().atMost(id(), late.plus(-1, beyond), (double) limit.most() * alike.count());
        program.model().minimise(Level.SHORTFALL, Linear.of(beyond));
      }
    }
  }

  @Override
  public Set<String> lacking(Plan plan) {
    Map<String, Feeding> feedings = plan.feedingsByMeal();
    Set<String> lacking = new TreeSet<>();
    tied.forEach(
        (animal, meals) -> {
          if (beyond(animal, meals, feedings) > 0) {
            lacking.add(animal);
          }
        });
    return lacking;
  }

  private long beyond(String animal, List<Demand> meals, Map<String, Feeding> feedings) {
    long sum = 0;
    for (Lateness limit : limits.getOrDefault(animal, List.of())) {
      long late = 0;
      for (Demand demand : meals) {
        Feeding feeding = feedings.get(demand.meal().id());
        late += feeding == null ? 0 : limit.of(demand.meal().days().late(feeding.day()));
      }
      sum += Math.max(0, late - limit.most());
    }
    return sum;
  }

  @Override
  public void judge(Plan plan, Books books) {
    Map<String, Feeding> feedings = plan.feedingsByMeal();
    long sum = 0;
    for (Map.Entry<String, List<Demand>> animal : tied.entrySet()) {
      sum += beyond(animal.getKey(), animal.getValue(), feedings);
    }
    books.shortfall(id(), sum);
  }
}
