package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.supply.Pack;
import io.frostlot.supply.Slot;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.SortedSet;
import java.util.function.LongSupplier;

/**
 * A search over sets of deliveries beside a local search, by the clock, where the programs of a few
 * deliveries are too large for SCIP and small enough for HiGHS: now and then what that finds of the
 * most promising set, and dives in sketches of many sets, each in a few ways, since rounding is a
 * matter of luck and a dive takes less than a second. The most promising ends of dives become
 * plans, and what lies near these is looked at, since they often lack a little. It finds plans of
 * few large orders, to which a local search seldom comes.
 */
final class MiddlingSets {
  private static final int FEW = 3;

  /** With more each dive takes long. */
  private static final int MANY_MEALS = 5000;

  /** Ways to dive in a set, in turn. */
  private static final List<Sketch> WAYS =
      List.of(
          new Sketch(0, true, 1),
          new Sketch(3, true, 1),
          new Sketch(0, true),
          new Sketch(6, true, 1),
          new Sketch(0, true, 2),
          new Sketch(3, true));

  /** A set in which dives were made counts as so much dearer, for each. */
  private static final double DEARER = 0.02;

  /** Of what an unmet meal weighs. */
  private static final double OF_A_MEAL = 0.01;

  /** Share of the usual warmth: more would lose what few orders save. */
  private static final double COOL = 0.02;

  private static final double COOL_NANOS = 4e9;
  private static final int STEPS = 12_000;

  private static final int MOST_PROMISING = 200;
  private static final int NEIGHBOURS = 12;
  private static final int LOOKS_AT_FIRST = 3;
  private static final long HIGHS_MILLIS = 10_000;

  /** Rounds of dives. */
  private static final int HIGHS_EVERY = 3;

  private static final int DIVES = 8;
  private static final int FEW_LACKING = 4;

  private final World world;
  private final OrderSets sets;
  private final Best best;
  private final Solving solving;
  private final Weights weights;

  /** About what it takes to make good a meal or a unit that is lacking. */
  private final double ofALack;

  private final Judging judging;
  private final Beginnings beginnings;
  private final Set<SortedSet<Slot>> tried = new HashSet<>();
  private final Map<Set<Slot>, Integer> dives = new HashMap<>();
  private final LittleOrders little;
  private final Polishing polishing;
  private int seed;
  private final PriorityQueue<Dived> ends =
      new PriorityQueue<>(Comparator.comparingDouble(Dived::value));

  MiddlingSets(World world, Best best, LongSupplier millisLeft) {
    this.world = world;
    this.best = best;
    weights = Weights.of(world);
    ofALack = OF_A_MEAL * weights.ofAMeal();
    judging = new Judging(world, best.apart());
    solving = new Solving(judging, best, best::offer, millisLeft, OptionalInt.empty());
    sets = new OrderSets(world, new SetValues(world, weights, best, solving));
    little = new LittleOrders(world);
    beginnings = new Beginnings(world);
    polishing = new Polishing(best, solving);
  }

  /** Is it a world of such sets? */
  boolean suits() {
    return TrialWorld.suits(world)
        && world.demands().size() <= MANY_MEALS
        && few().map(this::part).filter(LackingNothing::suits).isPresent();
  }

  /** As long as it may. */
  void run() {
    beginnings.parts().forEach(part -> sets.look(beginnings.guess(part)));
    Program coarse = new Coarse(world).program();
    beginnings.spread(coarse, weights, solving.budget()).forEach(sets::look);
    look(LOOKS_AT_FIRST);
    for (int round = 0; solving.goesOn(); round++) {
      if (round % HIGHS_EVERY == 0) {
        widened().filter(tried::add).flatMap(this::lackingNothing).ifPresent(this::polish);
      }
      for (int i = 0; i < DIVES && solving.goesOn(); i++) {
        next().map(this::dive).ifPresent(ends::add);
      }
      Optional.ofNullable(ends.poll())
          .filter(end -> end.value() < bestValue())
          .flatMap(end -> plan(end.slots(), end.packs()))
          .ifPresent(this::polish);
      look(1);
    }
  }

  private void look(int times) {
    for (int i = 0; i < times && solving.goesOn(); i++) {
      sets.expand(NEIGHBOURS);
    }
  }

  /** Some deliveries of a first guess. */
  private Optional<List<Slot>> few() {
    if (!beginnings.areParts()) {
      return Optional.empty();
    }
    return beginnings.parts().stream()
        .map(beginnings::guess)
        .filter(slots -> slots.size() >= FEW)
        .map(slots -> slots.subList(0, FEW))
        .findFirst();
  }

  /** The end of a dive: packs of each row, by delivery, and what they may come to. */
  private record Dived(List<Slot> slots, Map<Slot, Map<Pack, Integer>> packs, double value) {}

  private World part(List<Slot> slots) {
    return world.withSlots(slots).withoutMoves();
  }

  /** The most promising set with the cheap delivery added that promises most. */
  private Optional<SortedSet<Slot>> widened() {
    Optional<SortedSet<Slot>> first = next();
    if (first.filter(little::isWithout).isEmpty()) {
      return first;
    }
    List<Set<Slot>> wider = little.added(first.get());
    wider.forEach(sets::look);
    return sets.nextToSolve(wider);
  }

  private Optional<Answer.Judged> lackingNothing(SortedSet<Slot> slots) {
    List<Slot> some = List.copyOf(slots);
    if (!LackingNothing.suits(part(some))) {
      return Optional.empty();
    }
    Optional<Map<Slot, Map<Pack, Integer>>> packs =
        LackingNothing.packs(
            part(some), best.apart(), solving.budget(HIGHS_MILLIS), () -> !solving.goesOn());
    return packs.flatMap(it -> plan(some, it));
  }

  private Optional<Answer.Judged> plan(List<Slot> slots, Map<Slot, Map<Pack, Integer>> packs) {
    Attempt attempt = new Attempt(part(slots), judging);
    double[] point = attempt.pointOf(packs, solving.budget());
    return point.length == 0 ? Optional.empty() : attempt.finish(point, OptionalInt.empty());
  }

  private Optional<SortedSet<Slot>> next() {
    return sets.promising(MOST_PROMISING).stream()
        .filter(it -> count(it) < WAYS.size())
        .min(Comparator.comparingDouble(it -> it.value() * (1 + DEARER * count(it))))
        .map(OrderSets.Promise::slots);
  }

  private int count(OrderSets.Promise set) {
    return dives.getOrDefault(Set.copyOf(set.slots()), 0);
  }

  private Dived dive(SortedSet<Slot> slots) {
    int way = dives.merge(Set.copyOf(slots), 1, Integer::sum) - 1;
    World part = part(List.copyOf(slots));
    Attempt attempt = new Attempt(part, judging);
    Program sketch = Rules.program(WAYS.get(way).of(part));
    double[] point = attempt.dive(sketch, solving.budget());
    double value =
        point.length == 0 ? Double.POSITIVE_INFINITY : value(attempt.program().model(), point);
    Map<Slot, Map<Pack, Integer>> packs =
        point.length == 0 ? Map.of() : attempt.program().decisions().packs(point);
    return new Dived(part.slots(), packs, value);
  }

  /** What lies near it, where it is the best, or cheaper and lacks a little. */
  private void polish(Answer.Judged plan) {
    best.offer(plan);
    Answer.Judged mended = plan.standing().lacksNothing() ? plan : mended(plan);
    Answer.Judged from = isCheaper(mended) ? mended : plan;
    if (isCheaper(from)) {
      solving.near(from).ifPresent(best::offer);
    }
  }

  /** What a local search comes to from it, hardly warm. */
  private Answer.Judged mended(Answer.Judged plan) {
    TrialWorld trials = new TrialWorld(world).with(plan.plan());
    RepackingRun.Around around = new RepackingRun.Around(best, solving, polishing, true, true);
    RepackingRun.Pace pace = new RepackingRun.Pace(COOL * trials.warmth(), STEPS, COOL_NANOS);
    Optional<RepackingRun> run =
        TrialPlan.of(trials, plan.plan())
            .map(trial -> new RepackingRun(around, trials, plan, trial, pace, seed++));
    run.ifPresent(it -> it.run(System.nanoTime() + (long) COOL_NANOS));
    return run.map(RepackingRun::found).orElse(plan);
  }

  /** Does it lack little, for less money than the best plan, or is it that? */
  private boolean isCheaper(Answer.Judged plan) {
    Standing standing = plan.standing();
    return standing.unmet() + standing.shortfall() <= FEW_LACKING
        && best.plan()
            .filter(it -> it.standing().money().compareTo(standing.money()) < 0)
            .isEmpty();
  }

  /** Money, and about what it takes to make good what is lacking. */
  private double value(Model model, double[] point) {
    double value = model.objective(Level.MONEY).at(point);
    for (Level level : List.of(Level.UNMET_MUST, Level.UNMET_OTHER, Level.SHORTFALL)) {
      value += ofALack * model.objective(level).at(point);
    }
    return value;
  }

  private double bestValue() {
    return best.plan()
        .map(Answer.Judged::standing)
        .map(it -> it.money().toDouble() + ofALack * (it.unmet() + it.shortfall()))
        .orElse(Double.POSITIVE_INFINITY);
  }
}
