package io.frostlot.oracle;

import io.frostlot.forecast.Option;
import io.frostlot.keeping.Animal;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Policy;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * How far what is fed over four meals in a row, or all that an animal has where it has fewer, and
 * over the meals of any eight weeks of the planning, each such run once, lies outside its band of
 * the programme, in percent of the programme, rounded up over all runs (a thousandth does not
 * count); meals that are not met count neither way. Remembers by which option each meal was served,
 * in the counts of a state.
 *
 * <p>Where no choice of options comes to within the band, it is widened to the nearest that one
 * does, the heavier of two.
 */
final class Programmes {
  private static final int IN_A_ROW = 4;
  private static final int EIGHT_WEEKS = 56;
  private static final double NOTHING = 0.001;
  private final Tiny tiny;
  private final int first;
  private final List<List<Integer>> runs = new ArrayList<>();
  private final Wishes wishes;

  /**
   * Programmes of a tiny world.
   *
   * @param first of their counts in a state
   */
  Programmes(Tiny tiny, int first) {
    this.tiny = tiny;
    this.first = first;
    if (tiny.world.scenario().policy().adequacy().asked()) {
      tiny.world.scenario().collection().animals().forEach(this::addRuns);
    }
    wishes = new Wishes(tiny, first + own());
  }

  private void addRuns(Animal animal) {
    List<Integer> meals = new ArrayList<>();
    for (int index = 0; index < tiny.world.demands().size(); index++) {
      Demand demand = tiny.world.demands().get(index);
      boolean own = demand.meal().eater().equals(animal.name()) && !demand.tail();
      if (own && !demand.options().isEmpty()) {
        meals.add(index);
      }
    }
    int length = Math.min(IN_A_ROW, meals.size());
    Set<List<Integer>> own = new LinkedHashSet<>();
    for (int i = 0; length > 0 && i + length <= meals.size(); i++) {
      own.add(meals.subList(i, i + length));
    }
    for (int from = 0; from + EIGHT_WEEKS <= tiny.planned; from++) {
      int begun = from;
      own.add(meals.stream().filter(index -> isIn(begun, index)).toList());
    }
    own.stream().filter(run -> !run.isEmpty()).forEach(runs::add);
  }

  /** Is a meal best within eight weeks from a day on? */
  private boolean isIn(int from, int index) {
    int best = tiny.day(tiny.world.demands().get(index).meal().days().best());
    return from <= best && best < from + EIGHT_WEEKS;
  }

  /** Counts that they need: one for each demand; and those of wishes. */
  int size() {
    return own() + wishes.size();
  }

  private int own() {
    return runs.isEmpty() ? 0 : tiny.world.demands().size();
  }

  /** A meal is served by one of its options on a day. */
  State eat(State state, int demand, int option, int day) {
    State remembered = wishes.eat(state, demand, option, day);
    boolean counts = runs.stream().anyMatch(run -> run.contains(demand));
    return counts ? remembered.withCount(first + demand, option + 1) : remembered;
  }

  /** When everything is over it is seen how far off it was. */
  Stage end() {
    return (state, trail, next) -> {
      double off = runs.stream().mapToDouble(run -> percentOff(run, state)).sum();
      State cleared = state;
      for (int count = first; count < first + size(); count++) {
        cleared = cleared.withCount(count, 0);
      }
      long shortfall = (long) Math.ceil(Math.max(0, off - NOTHING)) + wishes.shortfall(state);
      next.add(cleared, new Score(0, 0, shortfall, 0), trail);
    };
  }

  private double percentOff(List<Integer> run, State state) {
    long fed = 0;
    double programme = 0;
    double met = 0;
    for (int index : run) {
      Demand demand = tiny.world.demands().get(index);
      double target = demand.meal().prey().window().target().milligrams();
      programme += target;
      int served = state.counts()[first + index];
      if (served > 0) {
        met += target;
        fed += milligrams(demand.options().get(served - 1));
      }
    }
    double[] band = band(run, programme);
    double share = met / programme;
    double off = Math.max(band[0] * share - fed, fed - band[1] * share);
    return 100 * Math.max(0, off) / programme;
  }

  private static long milligrams(Option option) {
    return option.item().grams().mean().milligrams() * option.pieces();
  }

  private double[] band(List<Integer> run, double programme) {
    Policy.Adequacy asked = tiny.world.scenario().policy().adequacy();
    double least = Math.ceil(programme * asked.least().value().doubleValue() / 100);
    double most = Math.floor(programme * asked.most().value().doubleValue() / 100);
    double nearest = Double.NaN;
    double distance = Double.POSITIVE_INFINITY;
    for (long sum : sums(run, 0)) {
      double off = Math.max(0, Math.max(least - sum, sum - most));
      if (off <= distance) {
        nearest = sum;
        distance = off;
      }
    }
    return new double[] {Math.min(least, nearest), Math.max(most, nearest)};
  }

  /** What the options can reach, all meals met, rising. */
  private Set<Long> sums(List<Integer> run, int from) {
    if (from == run.size()) {
      return Set.of(0L);
    }
    Set<Long> sums = new TreeSet<>();
    for (long rest : sums(run, from + 1)) {
      tiny.world.demands().get(run.get(from)).options().stream()
          .forEach(option -> sums.add(rest + milligrams(option)));
    }
    return sums;
  }
}
