package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.keeping.Animal;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.MealRuns;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.World;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Of an animal's meals in any eight weeks, at most a share is of a kind that it should get seldom.
 *
 * <p>For each animal, kind k with largest share q, and eight weeks w that begin on a planning day
 * (and end on one, where so many are planned): beyond &gt;= sum over its planning meals m in w, by
 * best day, of served(m, k) - floor(q x n(w)), n(w) the meals of its schedule in these weeks. The
 * sum of beyond, in meals, gives way before a meal does.
 */
final class KindShares implements Counted {
  private final Map<String, Animal> animals = new TreeMap<>();
  private final Map<String, List<Demand>> tied = new TreeMap<>();
  private final Map<String, Set<Weeks>> weeks = new TreeMap<>();

  /**
   * Some meals in a row of an animal's.
   *
   * @param most of them may be of the kind
   */
  private record Weeks(String kind, int from, int before, long most) {}

  KindShares(World world) {
    for (Animal animal : world.scenario().collection().animals()) {
      if (!animal.diet().plate().largestShares().isEmpty()) {
        animals.put(animal.name(), animal);
      }
    }
    if (!animals.isEmpty()) {
      MealRuns.mealsByAnimal(world).forEach((name, meals) -> tie(name, meals, world));
    }
  }

  private void tie(String name, List<Demand> meals, World world) {
    Animal animal = animals.get(name);
    if (animal == null) {
      return;
    }
    Set<Weeks> own = new LinkedHashSet<>();
    animal
        .diet()
        .plate()
        .largestShares()
        .forEach((kind, share) -> own.addAll(weeks(animal, kind, share, meals, world)));
    if (!own.isEmpty()) {
      tied.put(name, meals);
      weeks.put(name, own);
    }
  }

  private static List<Weeks> weeks(
      Animal animal, String kind, Percent share, List<Demand> meals, World world) {
    Period planning = world.scenario().planning();
    LocalDate last = planning.to().minusDays(MealRuns.EIGHT_WEEKS - 1L);
    LocalDate end = last.isBefore(planning.from()) ? planning.from() : last;
    List<Weeks> all = new ArrayList<>();
    for (LocalDate from = planning.from(); !from.isAfter(end); from = from.plusDays(1)) {
      Period eight = new Period(from, from.plusDays(MealRuns.EIGHT_WEEKS - 1L));
      int first = MealRuns.before(meals, from);
      int after = MealRuns.before(meals, eight.to().plusDays(1));
      long most =
          share
              .fraction()
              .multiply(BigDecimal.valueOf(animal.mealDays(eight).size()))
              .setScale(0, RoundingMode.FLOOR)
              .longValueExact();
      long possible =
          meals.subList(first, after).stream()
              .filter(demand -> demand.options().stream().anyMatch(it -> isOf(kind, it)))
              .count();
      if (possible > most) {
        all.add(new Weeks(kind, first, after, most));
      }
    }
    return all;
  }

  private static boolean isOf(String kind, Option option) {
    return option.item().kind().equals(kind);
  }

  @Override
  public String id() {
    return "kind-shares";
  }

  @Override
  public String says() {
    return "Kinds that "
        + animals.size()
        + (animals.size() == 1 ? " animal" : " animals")
        + " should get seldom keep to their share of the meals of eight weeks.";
  }

  @Override
  public Shortfall.Unit unit() {
    return Shortfall.Unit.MEALS;
  }

  @Override
  public Map<String, List<Demand>> tied() {
    return tied;
  }

  @Override
  public Object wish(String animal) {
    return weeks.getOrDefault(animal, Set.of());
  }

  @Override
  public void impose(Program program) {
    for (FedAlike alike : FedAlike.of(program, tied)) {
      for (Weeks some : weeks.get(alike.animals().get(0))) {
        Linear ofKind = new Linear();
        for (Decisions.Served served : alike.meals().subList(some.from(), some.before())) {
          ofKind.plus(served.weighed(choice -> isOf(some.kind(), choice.option()) ? 1 : 0));
        }
        giveWay(ofKind, (double) some.most() * alike.count(), program.model());
      }
    }
  }

  @Override
  public long beyond(String animal, Map<String, Feeding> feedings) {
    List<Demand> meals = tied.get(animal);
    long sum = 0;
    for (Weeks some : weeks.get(animal)) {
      long ofKind =
          meals.subList(some.from(), some.before()).stream()
              .map(demand -> feedings.get(demand.meal().id()))
              .filter(feeding -> feeding != null && isOf(some.kind(), feeding.option()))
              .count();
      sum += Math.max(0, ofKind - some.most());
    }
    return sum;
  }
}
