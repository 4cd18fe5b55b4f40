package io.frostlot.program;

import io.frostlot.forecast.Option;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Feeding;
import io.frostlot.plan.MealRuns;
import io.frostlot.plan.Shortfall;
import io.frostlot.plan.World;
import io.frostlot.units.SizeBand;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * An animal keeps to its kind and size of prey, or changes at most once in some meals in a row; a
 * size that would do no more may be left at any time. A meal that it misses is no change, and what
 * it had before that still counts.
 *
 * <p>For each animal, meal i of its planning meals by best day, and band b (see {@link SizeBand}):
 * had(i, b) is what it had last before meal i, however many meals it missed since; had(0, b) is
 * what it took before the planning days. had(i + 1, b) &gt;= served(i, b), and &gt;= had(i, b) -
 * served(i, other bands). For b among the options of meal i: left(i, b) &gt;= had(i, b) - served(i,
 * b) - missed(i). A meal is a change where some left(i, b) is 1. It keeps: beyond &gt;= sum of left
 * over all i and b. At most one change in n meals: beyond &gt;= sum of left over any n meals in a
 * row and all b - 1. The sum of beyond, in changes, gives way before a meal does.
 */
final class SeldomChanges implements Counted {
  private final Map<String, Plate.Change> changes = new TreeMap<>();
  private final Map<String, List<Demand>> tied;

  SeldomChanges(World world) {
    for (Animal animal : world.scenario().collection().animals()) {
      Plate.Change change = animal.diet().plate().change();
      if (change instanceof Plate.Keep || change instanceof Plate.Seldom) {
        changes.put(animal.name(), change);
      }
    }
    tied = MealRuns.mealsOf(changes.keySet(), world);
  }

  @Override
  public String id() {
    return "seldom-changes";
  }

  @Override
  public String says() {
    return changes.size()
        + (changes.size() == 1 ? " animal keeps" : " animals keep")
        + " to kind and size of prey, or seldom change.";
  }

  @Override
  public Shortfall.Unit unit() {
    return Shortfall.Unit.CHANGES;
  }

  @Override
  public Map<String, List<Demand>> tied() {
    return tied;
  }

  @Override
  public Object wish(String animal) {
    return changes.getOrDefault(animal, new Plate.Free());
  }

  /** Meals in a row in which changes are counted, and how many of them are right. */
  private record Row(int from, int before, int allowed) {}

  private static List<Row> rows(Plate.Change change, int meals) {
    if (!(change instanceof Plate.Seldom seldom)) {
      return List.of(new Row(0, meals, 0));
    }
    List<Row> rows = new ArrayList<>();
    int length = Math.min(seldom.meals(), meals);
    for (int from = 0; from + length <= meals; from++) {
      rows.add(new Row(from, from + length, 1));
    }
    return rows;
  }

  private static Set<SizeBand> bands(Demand demand) {
    Set<SizeBand> bands = new LinkedHashSet<>();
    demand.options().stream().map(Option::band).forEach(bands::add);
    return bands;
  }

  @Override
  public void impose(Program program) {
    for (FedAlike alike : FedAlike.of(program, tied)) {
      Plate.Change change = changes.get(alike.animals().get(0));
      List<Linear> left = left(alike, change.before(), program.model());
      for (Row row : rows(change, left.size())) {
        Linear sum = new Linear();
        left.subList(row.from(), row.before()).forEach(some -> sum.plus(some));
        giveWay(sum, (double) row.allowed() * alike.count(), program.model());
      }
    }
  }

  /** Changes at each meal, of all the animals. */
  private List<Linear> left(FedAlike alike, Set<SizeBand> before, Model model) {
    List<Set<SizeBand>> bands = alike.demands().stream().map(SeldomChanges::bands).toList();
    Map<SizeBand, Linear> had = new LinkedHashMap<>();
    before.forEach(band -> had.put(band, Linear.constant(alike.count())));
    List<Linear> left = new ArrayList<>();
    for (int i = 0; i < bands.size(); i++) {
      Decisions.Served now = alike.meals().get(i);
      Linear changes = new Linear();
      for (SizeBand band : bands.get(i)) {
        if (had.containsKey(band)) {
          Linear staying = of(band, now).plus(1, now.missed());
          changes.plus(1, atLeast(had.get(band).copy().minus(staying), alike, model));
        }
      }
      left.add(changes);
      Set<SizeBand> later = new LinkedHashSet<>();
      bands.subList(i + 1, bands.size()).forEach(later::addAll);
      had.keySet().retainAll(later);
      later.retainAll(bands.get(i));
      feed(alike, i, later, had, model);
    }
    return left;
  }

  /**
   * What is had after a meal.
   *
   * @param served sizes that it may be of and that count later
   */
  private void feed(
      FedAlike alike, int meal, Set<SizeBand> served, Map<SizeBand, Linear> had, Model model) {
    Decisions.Served now = alike.meals().get(meal);
    had.replaceAll(
        (band, before) -> {
          Linear others = now.weighed(choice -> choice.option().band().equals(band) ? 0 : 1);
          return Linear.of(atLeast(before.copy().minus(others), alike, model));
        });
    for (SizeBand band : served) {
      Linear own = of(band, now);
      if (had.containsKey(band)) {
        model.atLeast(id(), had.get(band).copy().minus(own), 0);
      } else if (!own.hasNoTerms()) {
        had.put(band, own);
      }
    }
  }

  /** Animals of which there are at least so many; no more, since they are charged. */
  private Var atLeast(Linear animals, FedAlike alike, Model model) {
    Var some = model.real(0, alike.count());
    model.atLeast(id(), Linear.of(some).minus(animals), 0);
    return some;
  }

  /** Meals that are served by a size. */
  private static Linear of(SizeBand band, Decisions.Served served) {
    return served.weighed(choice -> choice.option().band().equals(band) ? 1 : 0);
  }

  @Override
  public long beyond(String animal, Map<String, Feeding> feedings) {
    List<Demand> meals = tied.get(animal);
    Plate.Change change = changes.get(animal);
    int[] changed = new int[meals.size()];
    Set<SizeBand> had = change.before();
    for (int i = 0; i < changed.length; i++) {
      Feeding feeding = feedings.get(meals.get(i).meal().id());
      if (feeding != null) {
        Set<SizeBand> has = Set.of(feeding.option().band());
        boolean stays = has.equals(had) || had.stream().noneMatch(bands(meals.get(i))::contains);
        changed[i] = stays ? 0 : 1;
        had = has;
      }
    }
    long sum = 0;
    for (Row row : rows(change, changed.length)) {
      int count = Arrays.stream(changed, row.from(), row.before()).sum();
      sum += Math.max(0, count - row.allowed());
    }
    return sum;
  }
}
