package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.LongSupplier;

/**
 * {@link Repacking} from the best plan on, in turns with others who look for plans: it goes on
 * where it stopped, and begins anew from what lies near the best plan, or from that itself, where
 * it has cooled down, or others meet more meals.
 */
final class RepackingTurns {
  /** Share of the usual warmth with which it goes on from a plan that has been cold before. */
  private static final double TEPID = 0.25;

  private static final int STEPS = 12_000;
  private static final int COUNTED_STEPS = 4000;
  private static final int BRIEFLY = 300;
  private static final double COOLING_NANOS = 15e9;

  /** So that it has cooled down before the time is over, and others have some where it leads. */
  private static final double OF_THE_REST = 0.5;

  private static final double OF_THE_REST_TOGETHER = 0.3;

  private static final double LEAST_NANOS = 2e9;

  /** Longer than any search, also so many times as {@link #MOST}. */
  private static final long ENDLESS = Long.MAX_VALUE / 100;

  /** With more meals a step takes so long that others have as much time. */
  private static final int MANY_MEALS = 5000;

  private static final double LEAST = 0.25;

  /** At first, where others are soon done with what they do. */
  private static final double BESIDE_STRONG = 0.5;

  private static final double MOST = 8;

  /** Turns before others begin, as long as meals are unmet. */
  private static final int FIRST_TURNS = 3;

  /** Runs before others begin, where rounding is hard. */
  private static final int LEAD = 2;

  /** Where choices of a second search begin; the first never comes so far. */
  private static final int SECOND = 1_000_000;

  private final World world;
  private final Best best;
  private final Solving solving;
  private final Polishing polishing;
  private final OptionalInt rounds;
  private Optional<TrialWorld> trials = Optional.empty();
  private Optional<RepackingRun> now = Optional.empty();
  private int begun;
  private boolean tepid;
  private boolean ofUse;
  private boolean areOthersStrong;
  private Optional<Answer.Judged> last = Optional.empty();
  private double share = 1;

  /**
   * Nothing is searched yet.
   *
   * @param best told every plan that is better
   */
  RepackingTurns(World world, Best best, Solving solving, Polishing polishing, OptionalInt rounds) {
    this.world = world;
    this.best = best;
    this.solving = solving;
    this.polishing = polishing;
    this.rounds = rounds;
  }

  /** One beside the first, by the clock; unlike it by chance only. */
  static RepackingTurns second(World world, Best best, LongSupplier millisLeft) {
    Judging judging = new Judging(world, best.apart());
    Solving solving = new Solving(judging, best, best::offer, millisLeft, OptionalInt.empty());
    Polishing polishing = new Polishing(best, solving);
    RepackingTurns turns = new RepackingTurns(world, best, solving, polishing, OptionalInt.empty());
    turns.begun = SECOND;
    return turns;
  }

  /**
   * Is the program of packs told too little of what animals should have for others to be of use?
   */
  boolean isForAll() {
    return best.plan().isPresent() && TrialWorld.suits(world) && trials().hasMoreRuns();
  }

  /**
   * Searches as long as it may: a little from each of some plans, since they lead to unlike ends,
   * then from the best.
   */
  void alone(List<Answer.Judged> starts) {
    if (starts.size() > 1) {
      starts.stream().takeWhile(start -> solving.goesOn()).forEach(this::briefly);
      tepid = true;
    }
    int most = rounds.orElse(Integer.MAX_VALUE);
    for (int round = 0; round < most && solving.goesOn(); round++) {
      turn(ENDLESS);
    }
  }

  private void briefly(Answer.Judged start) {
    begin(
        Optional.of(start),
        new RepackingRun.Pace(trials().warmth(), BRIEFLY, Double.POSITIVE_INFINITY));
    now.ifPresent(run -> run.run(System.nanoTime() + ENDLESS));
  }

  /**
   * Before others begin: a moment, some more of them as long as meals are unmet; and where the
   * programs of sets of deliveries are not small, which is where rounding is hard, until it is cold
   * and, unless it has left meals unmet, has gone on from what lies near. Where they are small,
   * others have more of the time from each turn on that brings nothing while they bring something.
   */
  void lead(long nanos) {
    for (int turns = 0; turns == 0 || isLeading(turns); turns++) {
      turn(nanos);
    }
    if (share < MOST && solving.isSmall()) {
      areOthersStrong = true;
      share = BESIDE_STRONG;
      last = best.plan();
    }
  }

  private boolean isLeading(int turns) {
    if (share < MOST || !solving.goesOn()) {
      return false;
    }
    boolean lacks = solving.leavesMeals();
    return (lacks && turns < FIRST_TURNS)
        || (begun <= (lacks ? LEAD - 1 : LEAD) && timed() && isPolished() && !solving.isSmall());
  }

  /**
   * Searches for some time, or for a number of steps where rounds are counted.
   *
   * @param others nanoseconds that the others had; longer than these where it was of use before
   * @return the best plan, where it was found now
   */
  Optional<Answer.Judged> turn(long others) {
    if (!TrialWorld.suits(world)) {
      return Optional.empty();
    }
    Optional<Answer.Judged> before = best.plan();
    long end = System.nanoTime() + (long) (share * others);
    do {
      if (now.filter(run -> !run.isCold() && !isLeftBehind(run)).isEmpty()) {
        begin();
      }
      Optional<Answer.Judged> soFar = best.plan();
      now.ifPresent(run -> run.run(end));
      ofUse |= !best.plan().equals(soFar);
    } while (isPolished() && now.isPresent() && mayGoOn(end));
    Optional<Answer.Judged> found = best.plan().filter(plan -> !before.equals(Optional.of(plan)));
    if (areOthersStrong) {
      share(found.isPresent(), !before.equals(last));
      last = best.plan();
    }
    return found;
  }

  private void share(boolean gained, boolean othersGained) {
    if (gained && !othersGained) {
      share = Math.max(share, Math.min(1, 2 * share));
    } else if (othersGained && !gained) {
      share = Math.max(LEAST, share / 2);
    }
  }

  private boolean isLeftBehind(RepackingRun run) {
    return best.plan().filter(run::isLeftBehind).isPresent();
  }

  private boolean mayGoOn(long end) {
    return timed() && solving.goesOn() && System.nanoTime() < end;
  }

  private void begin() {
    if (now.isEmpty() && solving.leavesMeals() && !hasManyMeals()) {
      share = MOST;
    }
    Optional<Answer.Judged> near =
        now.isPresent() && isPolished()
            ? polishing.near().or(polishing::fedAnew)
            : Optional.empty();
    near.ifPresent(best::offer);
    if (now.filter(RepackingRun::isCold).isPresent()) {
      share = ofUse ? Math.min(MOST, share * 2) : Math.max(LEAST, share / 2);
      ofUse = false;
    }
    double warm = tepid || near.isPresent() ? TEPID : 1;
    tepid = !tepid;
    double part = world.keepers().size() > 1 ? OF_THE_REST_TOGETHER : OF_THE_REST;
    double nanos = Math.min(COOLING_NANOS, Math.max(LEAST_NANOS, part * solving.nanosLeft()));
    int steps = timed() ? STEPS : COUNTED_STEPS;
    begin(
        near.or(best::plan),
        new RepackingRun.Pace(
            warm * trials().warmth(), steps, timed() ? nanos : Double.POSITIVE_INFINITY));
  }

  private void begin(Optional<Answer.Judged> start, RepackingRun.Pace pace) {
    start.ifPresent(from -> trials = Optional.of(trials().with(from.plan())));
    TrialWorld of = trials();
    RepackingRun.Around around =
        new RepackingRun.Around(best, solving, polishing, timed(), isPolished());
    now =
        start.flatMap(
            from ->
                TrialPlan.of(of, from.plan())
                    .map(plan -> new RepackingRun(around, of, from, plan, pace, begun++)));
  }

  /** Made when first asked for. */
  private TrialWorld trials() {
    TrialWorld of = trials.orElseGet(() -> new TrialWorld(world));
    trials = Optional.of(of);
    return of;
  }

  private boolean hasManyMeals() {
    return world.demands().size() > MANY_MEALS;
  }

  private boolean isPolished() {
    return !hasManyMeals() && !trials().hasMoreRuns();
  }

  private boolean timed() {
    return rounds.isEmpty();
  }
}
