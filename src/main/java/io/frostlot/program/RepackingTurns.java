package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * {@link Repacking} from the best plan on, in turns with others who look for plans: it goes on
 * where it stopped, and begins anew from the best plan where it has cooled down, or others meet
 * more meals. What it finds is judged and replayed like any plan.
 */
final class RepackingTurns {
  /** Share of the usual warmth with which every second search begins. */
  private static final double TEPID = 0.25;

  private static final int STEPS = 12_000;
  private static final int COUNTED_STEPS = 4000;
  private static final int BRIEFLY = 300;
  private static final int STEPS_A_ROUND = 300;
  private static final double COOLING_NANOS = 15e9;

  /** So that it has cooled down before the time is over. */
  private static final double OF_THE_REST = 0.6;

  private static final double LEAST_NANOS = 2e9;

  /** Longer than any search, also so many times as {@link #MOST}. */
  private static final long ENDLESS = Long.MAX_VALUE / 100;

  /** With more meals a step takes so long that others have as much time. */
  private static final int MANY_MEALS = 5000;

  private static final double LEAST = 0.25;
  private static final double MOST = 8;
  private static final long JUDGE_AFTER_NANOS = TimeUnit.MILLISECONDS.toNanos(300);

  /** So many times as long as it takes to judge. */
  private static final int SELDOM = 20;

  private static final long SPELL_NANOS = TimeUnit.SECONDS.toNanos(1);

  /** So many times as long as it takes to feed a plan anew. */
  private static final int SELDOM_FED = 10;

  private final World world;
  private final Best best;
  private final Solving solving;
  private final OptionalInt rounds;
  private Optional<TrialWorld> trials = Optional.empty();
  private Optional<Repacking> now = Optional.empty();
  private Optional<Answer.Judged> first = Optional.empty();
  private Optional<Answer.Judged> from = Optional.empty();
  private Optional<Plan> unjudged = Optional.empty();
  private long judgeFrom;
  private Optional<Answer.Judged> unfed = Optional.empty();
  private long feedFrom;
  private long turned;
  private long worked;
  private long begun;
  private boolean tepid;
  private double share = 1;

  /**
   * Nothing is searched yet.
   *
   * @param best told every plan that is better
   */
  RepackingTurns(World world, Best best, Solving solving, OptionalInt rounds) {
    this.world = world;
    this.best = best;
    this.solving = solving;
    this.rounds = rounds;
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
    begin(Optional.of(start), of -> new Cooling(of.warmth(), BRIEFLY, () -> 0));
    now.ifPresent(search -> run(search, ENDLESS));
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
    if (now.filter(search -> !search.isCold() && !isLeftBehind()).isEmpty()) {
      begin();
    }
    now.ifPresent(search -> runInSpells(search, (long) (share * others)));
    return best.plan().filter(plan -> !before.equals(Optional.of(plan)));
  }

  /** Do others meet more meals? Where they only found less money it does as well to go on. */
  private boolean isLeftBehind() {
    return unmet(best.plan()) < unmet(from);
  }

  private static int unmet(Optional<Answer.Judged> plan) {
    return plan.map(it -> it.standing().unmet()).orElse(Integer.MAX_VALUE);
  }

  private void begin() {
    if (now.filter(Repacking::isCold).isPresent()) {
      share = best.plan().equals(first) ? Math.max(LEAST, share / 2) : Math.min(MOST, share * 2);
      first = best.plan();
    } else if (now.isEmpty() && unmet(best.plan()) > 0 && !hasManyMeals()) {
      share = MOST;
    }
    double warm = tepid ? TEPID : 1;
    tepid = !tepid;
    double nanos =
        Math.min(COOLING_NANOS, Math.max(LEAST_NANOS, OF_THE_REST * solving.nanosLeft()));
    begin(
        best.plan(),
        of ->
            new Cooling(
                warm * of.warmth(),
                timed() ? STEPS : COUNTED_STEPS,
                () -> timed() ? worked() / nanos : 0));
  }

  private void begin(Optional<Answer.Judged> start, Function<TrialWorld, Cooling> cooling) {
    from = start;
    worked = 0;
    TrialWorld of = trials();
    now =
        start
            .flatMap(plan -> TrialPlan.of(of, plan.plan()))
            .map(plan -> new Repacking(of, plan, cooling.apply(of), begun++));
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

  private boolean timed() {
    return rounds.isEmpty();
  }

  /** Nanoseconds of all turns of the present search. */
  private double worked() {
    return worked + (double) (turned == 0 ? 0 : System.nanoTime() - turned);
  }

  /**
   * Now and then what it has found is fed anew: a local search does that nearly as well as can be.
   * In worlds too large for that, or of too many runs, all at once: each spell ends with judging.
   */
  private void runInSpells(Repacking search, long nanos) {
    long end = System.nanoTime() + nanos;
    boolean feeds = !hasManyMeals() && !trials().hasMoreRuns();
    do {
      run(search, Math.min(feeds ? SPELL_NANOS : ENDLESS, end - System.nanoTime()));
      if (feeds && (!timed() || search.isCold() || System.nanoTime() > feedFrom)) {
        feedAnew();
      }
    } while (timed() && solving.goesOn() && !search.isCold() && System.nanoTime() < end);
  }

  private void feedAnew() {
    long begin = System.nanoTime();
    unfed.flatMap(solving::fedAnew).ifPresent(this::offer);
    unfed = Optional.empty();
    long end = System.nanoTime();
    feedFrom = end + SELDOM_FED * (end - begin);
  }

  private void run(Repacking search, long nanos) {
    turned = System.nanoTime();
    long end = turned + nanos;
    int last = search.steps() + STEPS_A_ROUND;
    BooleanSupplier on =
        () ->
            solving.goesOn()
                && !search.isCold()
                && (timed() ? System.nanoTime() < end : search.steps() < last);
    search.run(
        on,
        () -> {
          unjudged = Optional.of(search.plan().plan());
          if (timed() && System.nanoTime() > judgeFrom) {
            judge();
          }
        });
    judge();
    worked += System.nanoTime() - turned;
    turned = 0;
  }

  private void judge() {
    long begin = System.nanoTime();
    Optional<Answer.Judged> some = unjudged.flatMap(trials().judge()::judge);
    unjudged = Optional.empty();
    long end = System.nanoTime();
    judgeFrom = end + Math.max(JUDGE_AFTER_NANOS, SELDOM * (end - begin));
    some.ifPresent(this::offer);
    unfed = some.or(() -> unfed);
  }

  private void offer(Answer.Judged plan) {
    best.offer(plan);
    if (from.filter(own -> own.standing().compareTo(plan.standing()) <= 0).isEmpty()) {
      from = Optional.of(plan);
    }
  }
}
