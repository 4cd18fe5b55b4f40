package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Demand;
import io.frostlot.plan.Group;
import io.frostlot.plan.JointWorld;
import io.frostlot.plan.Keeper;
import io.frostlot.plan.Outcome;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Range;
import io.frostlot.plan.Shared;
import io.frostlot.plan.Standing;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.sharing.Game;
import io.frostlot.sharing.Subgroup;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Plans of the subgroups of a group, each solved once, and what they make known of its costs. The
 * game covers the meals that every member can meet alone.
 */
final class SubgroupPlans {
  /** Up to so many members every subgroup is looked at; of more only those that are sampled. */
  static final int MOST_EXACT = 8;

  private final Group group;
  private final Planner planner;
  private final Watch watch;
  private final Map<Subgroup, Optional<World>> worlds = new ConcurrentHashMap<>();
  private final Map<Subgroup, Answer> answers = new ConcurrentHashMap<>();
  private final Likeness likeness;
  private final Set<String> unmetAlone = new HashSet<>();

  SubgroupPlans(Group group, Planner planner, Watch watch) {
    this.group = group;
    this.planner = planner;
    this.watch = watch;
    likeness = new Likeness(group);
  }

  List<Keeper> keepers(Subgroup some) {
    return some.members().stream().map(group.keepers()::get).toList();
  }

  /** Every member's own plan; false where one has none. */
  boolean solveAlone(Limits limits) {
    for (int member = 0; member < group.keepers().size(); member++) {
      Subgroup alone = Subgroup.of(member);
      solve(alone, limits);
      if (!(answers.get(alone) instanceof Answer.WithPlan found)) {
        return false;
      }
      World world = world(alone).orElseThrow();
      Keeper keeper = group.keepers().get(member);
      Outcome.of(world, found.plan().plan())
          .missed()
          .forEach(missed -> unmetAlone.add(keeper.own(missed.demand().meal().id())));
    }
    return true;
  }

  Set<String> unmetAlone() {
    return unmetAlone;
  }

  /** The world of a subgroup with all its meals; empty where nobody can receive for it. */
  Optional<World> world(Subgroup some) {
    return worlds.computeIfAbsent(some, s -> JointWorld.of(keepers(s), group.agreement()));
  }

  /** Only the meals that are met alone, where it is more than one. */
  private World game(Subgroup some, World world) {
    List<Demand> met =
        world.demands().stream().filter(d -> !unmetAlone.contains(d.meal().id())).toList();
    return some.size() == 1 ? world : world.withDemands(met);
  }

  /** Is it the first of those that differ in names only? The others cost the same. */
  boolean isFirst(Subgroup some) {
    return likeness.first(some).equals(some);
  }

  /** Plans a subgroup, or again with other limits; the better answer is kept. */
  void solve(Subgroup some, Limits limits) {
    world(some).ifPresent(world -> keep(some, plan(some, game(some, world), limits, watch)));
  }

  /** An answer for a world of a subgroup. */
  Answer plan(Subgroup some, World world, Limits limits, Watch follower) {
    return some.size() == 1
        ? planner.plan(world, limits, follower)
        : new JointPlanner(planner, follower).plan(world, plansAlone(some), limits);
  }

  private Map<Keeper, Plan> plansAlone(Subgroup some) {
    Map<Keeper, Plan> plans = new LinkedHashMap<>();
    for (int member : some.members()) {
      plan(Subgroup.of(member))
          .ifPresent(alone -> plans.put(group.keepers().get(member), alone.plan().plan()));
    }
    return plans;
  }

  /** Also keeps an answer that was had in another way. */
  synchronized void keep(Subgroup some, Answer answer) {
    Range before = range(some);
    answers.merge(
        some, answer, (old, fresh) -> range(fresh, some).width() < before.width() ? fresh : old);
  }

  Optional<Answer.WithPlan> plan(Subgroup some) {
    return answers.get(some) instanceof Answer.WithPlan found
        ? Optional.of(found)
        : Optional.empty();
  }

  boolean isLarge() {
    return group.keepers().size() > MOST_EXACT;
  }

  /**
   * Costs of every subgroup, parts ordering each for itself where that is less; in a large group
   * those of each alone and of all, together or each alone.
   */
  Game game() {
    return isLarge() ? aloneAndAll() : unsplit().splitting();
  }

  private Game aloneAndAll() {
    Range unknown = new Range(0, Double.POSITIVE_INFINITY);
    Range apart =
        all().members().stream()
            .map(member -> range(Subgroup.of(member)))
            .reduce(Range.exactly(0), Range::plus);
    Range whole = range(all()).orLess(apart);
    return Game.of(
        group.names(),
        some -> some.size() == 1 ? range(some) : some.equals(all()) ? whole : unknown);
  }

  /** Costs of every subgroup ordering as one. */
  private Game unsplit() {
    return Game.of(group.names(), this::range);
  }

  /** The parts that order together in the plan in hand, each planned. */
  List<Subgroup> parts(Limits limits) {
    List<Subgroup> parts = isLarge() ? togetherOrAlone() : unsplit().cheapestParts();
    parts.stream().filter(part -> plan(part).isEmpty()).forEach(part -> solve(part, limits));
    return parts;
  }

  private List<Subgroup> togetherOrAlone() {
    boolean together = range(all()).most() <= game().toShare();
    return together ? List.of(all()) : all().members().stream().map(Subgroup::of).toList();
  }

  Subgroup all() {
    return Subgroup.all(group.keepers().size());
  }

  /**
   * A part of the group with its plan.
   *
   * @param shown instead of the plan that the game looks at
   */
  Shared.Part part(Subgroup some, Optional<Answer.WithPlan> shown) {
    List<Keeper> keepers = keepers(some);
    String host =
        some.size() == 1 ? "" : group.agreement().host(keepers).map(Keeper::name).orElseThrow();
    return new Shared.Part(
        keepers.stream().map(Keeper::name).toList(),
        host,
        world(some).orElseThrow(),
        shown.or(() -> plan(some)).orElseThrow());
  }

  synchronized Range range(Subgroup some) {
    Answer answer = answers.get(likeness.first(some));
    return answer == null ? nothingKnown(some) : range(answer, some);
  }

  private Range nothingKnown(Subgroup some) {
    boolean impossible = world(some).isEmpty();
    double least = impossible ? Double.POSITIVE_INFINITY : 0;
    return new Range(least, Double.POSITIVE_INFINITY);
  }

  /** A plan that leaves more undone than its members alone cannot be compared in money. */
  private Range range(Answer answer, Subgroup some) {
    if (!(answer instanceof Answer.WithPlan found)) {
      return nothingKnown(some);
    }
    Standing standing = found.plan().standing();
    double money = standing.money().toDouble();
    double bound = Math.max(0, Math.min(money, found.bound().orElse(0)));
    if (some.size() == 1) {
      return new Range(bound, money);
    }
    boolean worse = standing.unmet() > 0 || standing.shortfall() > shortfallAlone(some);
    if (!worse) {
      return new Range(bound, money);
    }
    double least = found.bound().isPresent() ? Double.POSITIVE_INFINITY : 0;
    return new Range(least, Double.POSITIVE_INFINITY);
  }

  private long shortfallAlone(Subgroup some) {
    return some.members().stream()
        .map(Subgroup::of)
        .flatMap(alone -> plan(alone).stream())
        .mapToLong(found -> found.plan().standing().shortfall())
        .sum();
  }
}
