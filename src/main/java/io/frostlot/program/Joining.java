package io.frostlot.program;

import io.frostlot.plan.World;
import io.frostlot.supply.Slot;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongSupplier;

/**
 * Finds plans of a joint world, begun with what its keepers would order alone: by a local search
 * from there ({@link RepackingTurns}), then by the programs of a few deliveries, each solved as a
 * whole, in turns with it. First the best plan's deliveries; those near them; then the best plan's
 * with those from which a relaxation would order; then with all of one supplier; after each what
 * lies near the best plan's packs. What is left of the time goes to {@link Improving}.
 */
final class Joining implements Runnable {
  private static final int NEAR_DAYS = 3;

  /** More of one supplier are thinned out. */
  private static final int MOST_OF_ONE = 8;

  /** Share of the time in which the local search comes first. */
  private static final double LEAD = 0.6;

  private static final long SET_MILLIS = 10_000;
  private final World world;
  private final List<Slot> known;
  private final Best best;
  private final LongSupplier millisLeft;
  private final OptionalInt rounds;
  private final Judging judging;
  private final Solving solving;
  private final Polishing polishing;
  private final RepackingTurns turns;
  private final Set<Set<Slot>> solved = new HashSet<>();

  /**
   * A search that has not begun.
   *
   * @param known deliveries that its keepers would order from alone
   */
  Joining(World world, List<Slot> known, Best best, LongSupplier millisLeft, OptionalInt rounds) {
    this.world = world;
    this.known = known;
    this.best = best;
    this.millisLeft = millisLeft;
    this.rounds = rounds;
    judging = new Judging(world, best.apart());
    solving = new Solving(judging, best, best::offer, millisLeft, rounds);
    polishing = new Polishing(best, solving);
    turns = new RepackingTurns(world, best, solving, polishing, rounds);
  }

  /** Are there several keepers, and more deliveries than one program is soon searched with? */
  static boolean suits(World world, List<Slot> known) {
    return world.keepers().size() > 1 && !known.isEmpty() && new Beginnings(world).areParts();
  }

  @Override
  public void run() {
    if (best.plan().isEmpty()) {
      dive(near(known));
    }
    turns.turn((long) (LEAD * solving.nanosLeft()));
    solve(new TreeSet<>(own()), Highs::minimise);
    solve(near(own()));
    int most = rounds.orElse(Integer.MAX_VALUE);
    for (int round = 0; round < most && goesOn(); round++) {
      Optional<Set<Slot>> next = next();
      if (next.isEmpty()) {
        break;
      }
      long begun = System.nanoTime();
      solve(next.get());
      turns.turn(System.nanoTime() - begun);
    }
    if (goesOn()) {
      new Improving(world, known, best, millisLeft, rounds).run();
    }
  }

  /** Deliveries of the best plan. */
  private List<Slot> own() {
    return best.plan().map(it -> it.plan().slots()).orElse(known);
  }

  private boolean goesOn() {
    return millisLeft.getAsLong() > 0 && !best.isProven() && !best.isImpossible();
  }

  /**
   * Deliveries of the same supplier within some days of these, and others for meals that the best
   * plan leaves unmet.
   */
  private Set<Slot> near(List<Slot> some) {
    Set<Slot> near = new TreeSet<>();
    for (Slot slot : world.slots()) {
      int days = world.joint().isJoint(slot) ? NEAR_DAYS : 0;
      if (some.stream().anyMatch(other -> isNear(slot, other, days))) {
        near.add(slot);
      }
    }
    best.plan().map(new Supplements(world)::all).ifPresent(near::addAll);
    return near;
  }

  private static boolean isNear(Slot slot, Slot other, int days) {
    return slot.supplier().equals(other.supplier())
        && Math.abs(ChronoUnit.DAYS.between(slot.ordered(), other.ordered())) <= days;
  }

  /** The next set that was not solved yet, nor is a part of one that was. */
  private Optional<Set<Slot>> next() {
    List<Slot> own = own();
    for (Optional<Set<Slot>> promised = best.promising().next();
        promised.isPresent();
        promised = best.promising().next()) {
      Set<Slot> with = with(own, promised.get());
      if (isNew(with)) {
        return Optional.of(with);
      }
    }
    return world.slots().stream()
        .map(Slot::supplier)
        .distinct()
        .map(supplier -> with(own, thinned(supplier)))
        .filter(this::isNew)
        .findFirst();
  }

  private boolean isNew(Set<Slot> set) {
    return solved.stream().noneMatch(other -> other.containsAll(set));
  }

  private static Set<Slot> with(Collection<Slot> own, Collection<Slot> others) {
    Set<Slot> with = new TreeSet<>(own);
    with.addAll(others);
    return with;
  }

  private List<Slot> thinned(String supplier) {
    List<Slot> all = world.slots().stream().filter(it -> it.supplier().equals(supplier)).toList();
    int count = Math.min(all.size(), MOST_OF_ONE);
    List<Slot> some = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      some.add(all.get(i * all.size() / count));
    }
    return some;
  }

  /** A first plan, where what is known cannot be followed here. */
  private void dive(Set<Slot> slots) {
    solving.briefly(() -> solving.solve(world.withSlots(List.copyOf(slots))).plan().isPresent());
  }

  private void solve(Set<Slot> slots) {
    solve(slots, BranchAndBound::inTurn);
  }

  private void solve(Set<Slot> slots, BranchAndBound solver) {
    solved.add(slots);
    Attempt attempt = new Attempt(world.withSlots(List.copyOf(slots)), judging);
    Scip.Budget budget =
        Scip.Budget.of(
            Math.min(SET_MILLIS, millisLeft.getAsLong()),
            rounds.isPresent() ? OptionalInt.of(1) : rounds);
    Scip.Task task = Scip.Task.of(attempt.objective(), List.of(), true, budget);
    attempt.minimise(task, solver, () -> !goesOn(), best::offer).plan().ifPresent(best::offer);
    polishing.near().ifPresent(best::offer);
  }
}
