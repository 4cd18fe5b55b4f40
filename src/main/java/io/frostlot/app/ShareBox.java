package io.frostlot.app;

import io.frostlot.files.GroupFolder;
import io.frostlot.files.GroupReading;
import io.frostlot.files.Problem;
import io.frostlot.plan.Answer;
import io.frostlot.plan.Gap;
import io.frostlot.plan.Group;
import io.frostlot.plan.LinearSolver;
import io.frostlot.plan.Shared;
import io.frostlot.plan.World;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import io.frostlot.sharing.Game;
import io.frostlot.sharing.Sharing;
import io.frostlot.sharing.Subgroup;
import io.frostlot.units.Money;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Plans a joint order of a group of keepers, and says who gets and pays what. */
public final class ShareBox {
  private static final double NARROW_SAVING = 0.05;

  /**
   * One part in so many of the time is for members' own plans, and a small one for looking at them
   * again once the joint plan is there, which has the rest.
   */
  private static final int ALONE_PART = 3;

  private static final int AGAIN_PART = 6;

  /** A plan is looked for until it is known to so much of its money. */
  private static final double NEAR = 0.005;

  private final Planner planner;
  private final LinearSolver solver;

  public ShareBox(Planner planner, LinearSolver solver) {
    this.planner = planner;
    this.solver = solver;
  }

  /** What reading the folder came to. */
  public sealed interface Prepared {}

  /**
   * Something cannot be used.
   *
   * @param problems of all files, at least one
   */
  public record Refused(List<Problem> problems) implements Prepared {
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /** Everything is there to plan with. */
  public record Ready(Group group, List<String> warnings) implements Prepared {
    public Ready {
      warnings = List.copyOf(warnings);
    }
  }

  /**
   * How much work is done.
   *
   * @param joint limits of the joint plan, and of all members' own together
   * @param subgroups limits of all other subgroups together; empty: they are not planned, and only
   *     ways that do not look at them can be had
   */
  public record Work(Limits joint, Optional<Limits> subgroups) {}

  /** Follows how it goes. */
  public interface Progress extends Watch {
    /** So many members have a plan of their own. */
    void alone(int planned, int all);

    /** A member has none, and so nothing is shared; the answer says why. */
    default void without(String member, Answer none) {}

    /** So many subgroups are planned, and the cost of the least known is known to so much. */
    void subgroups(int planned, int all, double widest);

    /** All that is known of the subgroups once the work on them is over. */
    default void costs(SubgroupCosts known) {}
  }

  /**
   * Reads everything; all problems come together.
   *
   * @param profiles folder of supplier profiles, at most one; none: beside the group
   */
  public Prepared prepare(Path folder, List<Path> profiles) {
    GroupReading reading =
        profiles.isEmpty() ? GroupFolder.read(folder) : GroupFolder.read(folder, profiles.get(0));
    if (reading instanceof GroupReading.Accepted accepted) {
      return new Ready(accepted.group(), accepted.warnings());
    }
    return new Refused(((GroupReading.Refused) reading).problems());
  }

  /** Empty where a member has no plan of its own in the time given, or at all. */
  public Optional<Shared> share(Group group, Work work, Progress progress) {
    long end = System.nanoTime() + work.joint().time().toNanos();
    SubgroupPlans plans = new SubgroupPlans(group, planner, Watch.stopping(progress::stop));
    Subgroup all = plans.all();
    Duration time = work.joint().time();
    OwnPlans own = new OwnPlans(group, plans, work.joint(), progress);
    if (!own.find(all.size() == 1 ? time : time.dividedBy(ALONE_PART))) {
      return Optional.empty();
    }
    Optional<Answer.WithPlan> joint = Optional.empty();
    if (all.size() > 1) {
      Duration again = time.dividedBy(AGAIN_PART);
      joint = jointPlan(plans, all, left(end - again.toNanos(), work.joint()), progress);
      own.improve(joint, left(end, work.joint()).time());
    }
    WaysShown ways = ways(plans, work, progress);
    if (plans.unmetAlone().isEmpty()) {
      joint = plans.plan(all);
    }
    return Optional.of(
        new Sheets(group, plans, parts(plans, work, joint))
            .make(new Sharing(group.terms().base(), solver), ways));
  }

  /** What is left of the time, or a little; the same rounds. */
  private static Limits left(long end, Limits limits) {
    Duration least = limits.time().dividedBy(AGAIN_PART);
    Duration left = Duration.ofNanos(end - System.nanoTime());
    return new Limits(left.compareTo(least) > 0 ? left : least, limits.rounds());
  }

  private static WaysShown ways(SubgroupPlans plans, Work work, Progress progress) {
    if (work.subgroups().isEmpty()) {
      return new WaysShown.Own();
    }
    Limits limits = work.subgroups().get();
    if (plans.isLarge()) {
      return new WaysShown.Sampled(new SampledWork(plans, limits, progress).run());
    }
    long begin = System.nanoTime();
    double wanted = widthWanted(plans);
    if (plans.all().size() > 2) {
      new SubgroupWork(plans, limits, progress).run(wanted);
    }
    Duration took = Duration.ofNanos(System.nanoTime() - begin);
    progress.costs(new SubgroupCosts(plans.game(), wanted, took));
    return new WaysShown.All();
  }

  /** The plan of everybody, with the meals that some would not meet alone. */
  private Optional<Answer.WithPlan> jointPlan(
      SubgroupPlans plans, Subgroup all, Limits limits, Progress progress) {
    Optional<World> world = plans.world(all);
    if (world.isEmpty()) {
      return Optional.empty();
    }
    Patience patience = new Patience(progress, limits.time(), found -> isNear(found, limits));
    Answer answer = plans.plan(all, world.get(), limits, patience);
    if (plans.unmetAlone().isEmpty()) {
      plans.keep(all, answer);
    } else if (!plans.keepForGame(all, answer)) {
      plans.solve(all, limits, Watch.stopping(progress::stop));
    }
    return answer instanceof Answer.WithPlan found ? Optional.of(found) : Optional.empty();
  }

  /** The rest of the time is then worth more for other plans. */
  static boolean isNear(Answer.WithPlan found, Limits limits) {
    double money = found.plan().standing().money().toDouble();
    return limits.rounds().isEmpty() && found.isKnownWithin(NEAR * money);
  }

  private static List<Shared.Part> parts(
      SubgroupPlans plans, Work work, Optional<Answer.WithPlan> joint) {
    return plans.parts(work.joint()).stream()
        .map(
            some ->
                some.equals(plans.all())
                    ? plans.part(some, joint)
                    : plans.part(some, Optional.empty()))
        .toList();
  }

  /** A tenth of a box charge, or a twentieth of what ordering together saves. */
  private static double widthWanted(SubgroupPlans plans) {
    Game game = plans.game();
    double alone = 0;
    for (int member = 0; member < game.members().size(); member++) {
      alone += game.cost(Subgroup.of(member)).most();
    }
    double boxCharge =
        plans
            .plan(game.all())
            .flatMap(answer -> Gap.boxCharge(answer.plan()))
            .map(Money::toDouble)
            .orElse(0.0);
    return Math.max(NARROW_SAVING * (alone - game.toShare()), boxCharge / 10);
  }
}
