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
import io.frostlot.plan.World;
import io.frostlot.program.Engine;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.sharing.Game;
import io.frostlot.sharing.Subgroup;
import io.frostlot.supply.Slot;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

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
  private final SubgroupAnswers answers = new SubgroupAnswers();
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

  /** What members' own plans leave unmet is known from now on; false where one has no plan. */
  boolean knowAlone() {
    for (int member : all().members()) {
      Subgroup alone = Subgroup.of(member);
      if (!(answers.of(alone) instanceof Answer.WithPlan found)) {
        return false;
      }
      unmetAlone.addAll(missed(alone, found));
    }
    return true;
  }

  /** Meals that a subgroup's plan leaves unmet, by their names in joint worlds. */
  private Set<String> missed(Subgroup some, Answer.WithPlan found) {
    UnaryOperator<String> name =
        some.size() == 1 ? keepers(some).get(0)::own : UnaryOperator.identity();
    return Outcome.of(world(some).orElseThrow(), found.plan().plan()).missed().stream()
        .map(missed -> name.apply(missed.demand().meal().id()))
        .collect(Collectors.toSet());
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

  /**
   * Plans a subgroup, or goes on from the plan that is known; the better answer is kept. A member's
   * own plan stays one of the same meals. Returns what is known then.
   */
  Answer solve(Subgroup some, Limits limits, Watch follower) {
    Optional<World> world = world(some);
    if (world.isPresent()) {
      keepOfSameMeals(some, plan(some, game(some, world.get()), limits, follower));
    }
    return answers.of(some);
  }

  private void keepOfSameMeals(Subgroup some, Answer fresh) {
    Optional<Answer.WithPlan> before = plan(some);
    boolean sameMeals =
        some.size() > 1
            || before.isEmpty()
            || (fresh instanceof Answer.WithPlan found
                && missed(some, found).equals(missed(some, before.get())));
    if (sameMeals) {
      keep(some, fresh);
    }
  }

  /** Looks for a better own plan of a member among a few deliveries only, which has no bound. */
  void solveAlone(int member, List<Slot> few, Limits limits, Watch follower) {
    Subgroup alone = Subgroup.of(member);
    World world = world(alone).orElseThrow();
    Answer answer = planner.plan(world.withSlots(few), limits, follower);
    if (answer instanceof Answer.WithPlan found) {
      keepOfSameMeals(alone, new Answer.BestFound(found.plan(), OptionalDouble.empty()));
    }
  }

  /** An answer for a world of a subgroup. */
  Answer plan(Subgroup some, World world, Limits limits, Watch follower) {
    Optional<Plan> known = plan(some).map(found -> found.plan().plan());
    if (some.size() > 1) {
      return new JointPlanner(planner, follower).plan(world, plansAlone(some), known, limits);
    }
    return known.isEmpty()
        ? planner.plan(world, limits, follower)
        : planner.planFrom(known.stream().toList(), world, limits, follower);
  }

  /**
   * Keeps an answer for all meals of a subgroup as one for those that are met alone; false where it
   * says nothing of these. A plan that leaves just the others unmet is one, and each such plan is
   * one for all meals that is as good before money: so the bound holds too.
   */
  boolean keepForGame(Subgroup some, Answer answer) {
    World all = world(some).orElseThrow();
    if (!(answer instanceof Answer.WithPlan found)
        || found.plan().standing().shortfall() > 0
        || !missed(some, found).equals(unmetAlone)) {
      return false;
    }
    Optional<Answer.Judged> judged = Engine.judge(game(some, all), found.plan().plan());
    judged.ifPresent(plan -> keep(some, new Answer.BestFound(plan, found.bound())));
    return judged.isPresent();
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
  void keep(Subgroup some, Answer answer) {
    answers.keep(some, answer);
  }

  Optional<Answer.WithPlan> plan(Subgroup some) {
    return answers.plan(some);
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
    parts.stream().filter(part -> plan(part).isEmpty()).forEach(part -> solve(part, limits, watch));
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

  /** Where the cost of a subgroup ordering as one lies. */
  Range range(Subgroup some) {
    Subgroup first = likeness.first(some);
    return world(first).isEmpty()
        ? new Range(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)
        : answers.range(first);
  }
}
