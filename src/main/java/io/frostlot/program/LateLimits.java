package io.frostlot.program;

import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Lateness;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.MealRuns;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.World;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Over the planning days an animal has at most so many late meals, or so many days late in all.
 *
 * <p>For each animal and limit, m its planning meals and x their choices, late(x) the days after
 * the best day, or 1 where meals are counted: beyond &gt;= sum of served(m, x) x late(x) - most.
 * The sum of beyond, in meals or days, gives way before a meal does.
 */
final class LateLimits implements Counted {
  private final Map<String, List<Lateness>> limits = new TreeMap<>();
  private final Map<String, List<Demand>> tied;

  LateLimits(World world) {
    for (Animal animal : world.scenario().collection().animals()) {
      List<Lateness> own = animal.programme().days().limits();
      if (!own.isEmpty()) {
        limits.put(animal.name(), own);
      }
    }
    tied = MealRuns.mealsOf(limits.keySet(), world);
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
  public Shortfall.Unit unit() {
    return Shortfall.Unit.MEALS_OR_DAYS;
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
          late.plus(served.weighed(choice -> limit.of(choice.lateDays())));
        }
        giveWay(late, (double) limit.most() * alike.count(), program.model());
      }
    }
  }

  @Override
  public long beyond(String animal, Map<String, Feeding> feedings) {
    long sum = 0;
    for (Lateness limit : limits.get(animal)) {
      long late = 0;
      for (Demand demand : tied.get(animal)) {
        Feeding feeding = feedings.get(demand.meal().id());
        late += feeding == null ? 0 : limit.of(demand.meal().days().late(feeding.day()));
      }
      sum += Math.max(0, late - limit.most());
    }
    return sum;
  }
}
