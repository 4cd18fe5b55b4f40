package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * Finds plans: solves the program of one set of deliveries after another (see {@link OrderSets}),
 * the most promising next; a small world is one program. A plan of a part of the world's deliveries
 * is a plan of the whole.
 */
final class Improving implements Runnable {
  private static final int NEIGHBOURS = 12;
  private static final int MOST_LOOKS = 4;

  /**
   * Before deliveries as the relaxation spreads them are looked at, which takes seconds, where much
   * is known or sets are soon solved.
   */
  private static final int ROUNDS_AT_ONCE = 4;

  /** So many looks take no longer than to solve a set did. */
  private static final int LITTLE = 8;

  private static final long MOMENT_NANOS = TimeUnit.MILLISECONDS.toNanos(25);

  /** More of local search where something falls short. */
  private static final int MOMENTS = 10;

  private static final long FIRST_TURN_NANOS = TimeUnit.MILLISECONDS.toNanos(200);

  /** Of a plan's money, what is not worth a look. */
  private static final double LITTLE_OF_IT = 0.001;

  private final World world;
  private final List<Slot> known;
  private final Best best;
  private final Weights weights;
  private final Beginnings beginnings;
  private final SetValues values;
  private final OrderSets sets;
  private final Judging judging;
  private final Solving solving;
  private final OptionalInt rounds;
  private final Polishing polishing;
  private final RepackingTurns repacking;
  private final List<Answer.Judged> rough = new ArrayList<>();

  /** Deliveries of which no plan is better than the one found, or by next to nothing. */
  private final Set<Set<Slot>> asGoodAsCanBe = new HashSet<>();

  private long turned = System.nanoTime();
  private long solvedNanos;

  /**
   * A search that has not begun.
   *
   * @param known deliveries to look at first; may be empty
   */
  Improving(World world, List<Slot> known, Best best, LongSupplier millisLeft, OptionalInt rounds) {
    this.world = world;
    this.known = known;
    this.best = best;
    this.rounds = rounds;
    weights = Weights.of(world);
    beginnings = new Beginnings(world);
    judging = new Judging(world, best.apart());
    solving = new Solving(judging, best, this::offer, millisLeft, rounds);
    values = new SetValues(world, weights, best, solving);
    sets = new OrderSets(world, values);
    polishing = new Polishing(best, solving);
    repacking = new RepackingTurns(world, best, solving, polishing, rounds);
  }

  @Override
  public void run() {
    if (ManyKinds.suits(world)) {
      new ManyKinds(world, best, solving::goesOn, rounds, repacking::turn).run();
      if (best.plan().isPresent() || !solving.goesOn()) {
        return;
      }
    }
    atOnce();
    if (Bounding.isSmall(world)) {
      moment();
      if (solving.briefly(this::isBegun) || solving.isSearchedByHighs()) {
        return;
      }
    }
    if (!beginnings.areParts()) {
      solving.searchOnAndOn();
      return;
    }
    if (!repacking.isForAll()) {
      repacking.lead(FIRST_TURN_NANOS);
      turned = System.nanoTime();
      first();
    }
    if (repacking.isForAll()) {
      repacking.alone(rough);
    } else {
      bySets();
    }
  }

  /** Of local search; longer where something falls short at first: programs find all else soon. */
  private void moment() {
    repacking.turn(MOMENT_NANOS);
    int more = solving.fallsShort() ? MOMENTS : 0;
    for (int n = 0; n < more && solving.goesOn(); n++) {
      repacking.turn(FIRST_TURN_NANOS);
    }
  }

  /** Looks for a first plan; is that all there is to find? */
  private boolean isBegun() {
    if (!beginnings.areParts()) {
      return solving.isSearched();
    }
    first();
    return false;
  }

  private void first() {
    sets.look(known);
    Optional<Answer.Judged> before = best.plan();
    if (!known.isEmpty()) {
      solve(new TreeSet<>(known));
    }
    if (best.plan().equals(before) && (before.isEmpty() || !rough.isEmpty())) {
      begin();
    }
  }

  /** Plans that take no time, to have something to show. */
  private void atOnce() {
    if (best.plan().isEmpty() && beginnings.areParts() && AtOnce.suits(world)) {
      AtOnce plans = new AtOnce(world, rounds);
      for (List<Slot> part : beginnings.parts()) {
        plans.plan(beginnings.guess(part)).ifPresent(this::offerRough);
      }
    }
  }

  private void offerRough(Answer.Judged plan) {
    rough.add(plan);
    best.offer(plan);
  }

  private void begin() {
    for (List<Slot> part : beginnings.parts()) {
      sets.look(beginnings.guess(part));
    }
    sets.nextToSolve(solving.value()).ifPresent(this::solve);
  }

  private void bySets() {
    if (solving.losses() > 0) {
      begin();
    }
    int most = rounds.orElse(Integer.MAX_VALUE);
    boolean isSoon = !known.isEmpty() || solving.isSmall();
    int spreadFrom = isSoon ? Math.min(ROUNDS_AT_ONCE, most - 1) : 0;
    for (int round = 0; round < most && solving.goesOn(); round++) {
      if (round == spreadFrom) {
        Program coarse = new Coarse(world).program();
        beginnings.spread(coarse, weights, solving.budget()).forEach(sets::look);
      }
      look();
      supplemented()
          .or(() -> sets.nextToSolve(solving.value()))
          .ifPresentOrElse(this::solve, this::turn);
    }
  }

  /**
   * At sets next to promising ones: more where the last ones promised more than all before, up to
   * the time that it took to solve one, or where they took next to no time.
   */
  private void look() {
    long begun = System.nanoTime();
    boolean more = true;
    for (int looks = 0; more && solving.goesOn(); looks++) {
      long before = System.nanoTime() - begun;
      boolean isOfUse = sets.expand(NEIGHBOURS);
      long spent = System.nanoTime() - begun;
      boolean isLittle = rounds.isEmpty() && LITTLE * (spent - before) < solvedNanos;
      boolean isShort = rounds.isEmpty() && spent < solvedNanos;
      more = looks + 1 < MOST_LOOKS ? isOfUse || isLittle : isOfUse && isShort;
    }
  }

  /** The best plan's deliveries and one more for a meal that it leaves unmet. */
  private Optional<SortedSet<Slot>> supplemented() {
    List<Set<Slot>> more =
        best.plan().map(plan -> new Supplements(world).of(plan)).orElse(List.of());
    more.forEach(sets::look);
    return sets.nextToSolve(more);
  }

  private void offer(Answer.Judged plan) {
    best.offer(plan);
    sets.look(plan.plan().slots());
  }

  private void solve(SortedSet<Slot> slots) {
    Optional<Answer.Judged> before = best.plan();
    int keptBack = values.keptBack();
    long begun = System.nanoTime();
    Attempt.Result result = solving.solve(world.withSlots(List.copyOf(slots)));
    solvedNanos = System.nanoTime() - begun;
    if (values.keptBack() > keptBack) {
      // all look different from then on
      sets.forgetUnsolved();
    }
    double value = weights.of(result.plan());
    List<Slot> used = result.plan().map(it -> it.plan().slots()).orElse(List.copyOf(slots));
    sets.solved(slots, value, used);
    if (result.finished()) {
      sets.solved(used, value, used);
    }
    if (result.isBestWithin(LITTLE_OF_IT)) {
      asGoodAsCanBe.add(Set.copyOf(used));
    }
    turn();
    if (best.plan().equals(before) && best.plan().filter(this::isAsGoodAsCanBe).isEmpty()) {
      polishing.near().ifPresent(this::offer);
    }
  }

  private void turn() {
    repacking.turn(System.nanoTime() - turned).ifPresent(this::offer);
    turned = System.nanoTime();
  }

  private boolean isAsGoodAsCanBe(Answer.Judged plan) {
    return asGoodAsCanBe.contains(Set.copyOf(plan.plan().slots()));
  }
}
