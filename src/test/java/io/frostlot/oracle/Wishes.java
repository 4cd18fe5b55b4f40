package io.frostlot.oracle;

import io.frostlot.forecast.Option;
import io.frostlot.keeping.Animal;
import io.frostlot.keeping.Lateness;
import io.frostlot.keeping.Plate;
import io.frostlot.plan.Demand;
import io.frostlot.units.Percent;
import io.frostlot.units.Period;
import io.frostlot.units.SizeBand;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How far meals of an animal miss what it should have: late ones beyond a limit, kinds beyond their
 * share in any eight weeks of the planning, or in its days and some more where these are fewer,
 * changes of kind or size. Remembers by which option and how late each meal was served, in the
 * counts of a state.
 */
final class Wishes {
  private static final int MOST_LATE = 8;
  private static final int EIGHT_WEEKS = 56;
  private final Tiny tiny;
  private final int first;
  private final List<Animal> animals;

  /**
   * Wishes of a tiny world.
   *
   * @param first of their counts in a state
   */
  Wishes(Tiny tiny, int first) {
    this.tiny = tiny;
    this.first = first;
    animals =
        tiny.world.scenario().collection().animals().stream()
            .filter(
                animal ->
                    !animal.programme().days().limits().isEmpty()
                        || !animal.diet().plate().equals(Plate.ANY))
            .toList();
  }

  /** Counts that they need: one for each demand. */
  int size() {
    return animals.isEmpty() ? 0 : tiny.world.demands().size();
  }

  /** A meal is served by one of its options on a day. */
  State eat(State state, int index, int option, int day) {
    Demand demand = tiny.world.demands().get(index);
    boolean counts =
        !demand.tail() && animals.stream().anyMatch(a -> a.name().equals(demand.meal().eater()));
    int late = (int) demand.meal().days().late(tiny.date(day));
    return counts ? state.withCount(first + index, 1 + late + MOST_LATE * option) : state;
  }

  long shortfall(State state) {
    return animals.stream().mapToLong(animal -> shortfall(animal, state)).sum();
  }

  private long shortfall(Animal animal, State state) {
    List<Integer> meals = new ArrayList<>();
    for (int index = 0; index < tiny.world.demands().size(); index++) {
      Demand demand = tiny.world.demands().get(index);
      if (demand.meal().eater().equals(animal.name()) && !demand.tail()) {
        meals.add(index);
      }
    }
    long sum = 0;
    for (Lateness limit : animal.programme().days().limits()) {
      long late = 0;
      for (int index : meals) {
        int days = Math.max(0, state.counts()[first + index] - 1) % MOST_LATE;
        late += limit.counted() == Lateness.Counted.DAYS ? days : days > 0 ? 1 : 0;
      }
      sum += Math.max(0, late - limit.most());
    }
    for (Map.Entry<String, Percent> share : animal.diet().plate().largestShares().entrySet()) {
      sum += beyondShare(animal, share.getKey(), share.getValue(), meals, state);
    }
    return sum + changes(animal.diet().plate().change(), meals, state);
  }

  /** Eight weeks with the same meals, of which the same number is right, are one. */
  private record Weeks(List<Integer> meals, long allowed) {}

  private long beyondShare(
      Animal animal, String kind, Percent share, List<Integer> meals, State state) {
    Set<Weeks> all = new HashSet<>();
    for (int day = 0; day == 0 || day + EIGHT_WEEKS <= tiny.planned; day++) {
      LocalDate from = tiny.date(day);
      Period weeks = new Period(from, from.plusDays(EIGHT_WEEKS - 1L));
      int due = animal.mealDays(weeks).size();
      long allowed = (long) Math.floor(due * share.value().doubleValue() / 100 + 1e-9);
      all.add(
          new Weeks(meals.stream().filter(index -> weeks.contains(best(index))).toList(), allowed));
    }
    long beyond = 0;
    for (Weeks weeks : all) {
      long served =
          weeks.meals().stream()
              .filter(index -> state.counts()[first + index] > 0)
              .filter(index -> option(index, state).item().kind().equals(kind))
              .count();
      beyond += Math.max(0, served - weeks.allowed());
    }
    return beyond;
  }

  private LocalDate best(int index) {
    return tiny.world.demands().get(index).meal().days().best();
  }

  private Option option(int index, State state) {
    int remembered = state.counts()[first + index] - 1;
    return tiny.world.demands().get(index).options().get(remembered / MOST_LATE);
  }

  private long changes(Plate.Change change, List<Integer> meals, State state) {
    if (!(change instanceof Plate.Keep) && !(change instanceof Plate.Seldom)) {
      return 0;
    }
    int[] changed = new int[meals.size()];
    List<SizeBand> had = List.copyOf(change.before());
    for (int i = 0; i < changed.length; i++) {
      int index = meals.get(i);
      if (state.counts()[first + index] == 0) {
        continue;
      }
      SizeBand has = option(index, state).band();
      List<SizeBand> would =
          tiny.world.demands().get(index).options().stream().map(Option::band).toList();
      changed[i] = !had.isEmpty() && !had.get(0).equals(has) && would.contains(had.get(0)) ? 1 : 0;
      had = List.of(has);
    }
    if (change instanceof Plate.Keep) {
      return sum(changed, 0, changed.length);
    }
    int length = Math.min(((Plate.Seldom) change).meals(), changed.length);
    long beyond = 0;
    for (int from = 0; from + length <= changed.length; from++) {
      beyond += Math.max(0, sum(changed, from, from + length) - 1);
    }
    return beyond;
  }

  private static int sum(int[] numbers, int from, int before) {
    int sum = 0;
    for (int i = from; i < before; i++) {
      sum += numbers[i];
    }
    return sum;
  }
}
