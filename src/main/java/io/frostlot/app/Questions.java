package io.frostlot.app;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Difference;
import io.frostlot.plan.Plan;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import io.frostlot.program.Inquiry;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Worlds that resemble each other, looked at one after another: every plan found is offered to the
 * questions after it, so that a difference does not change its sign by chance; a question asked
 * again goes on where it stopped; and bounds are shared as {@link Looseness} says.
 */
public final class Questions implements AutoCloseable {
  private static final int MOST_KNOWN = 24;

  /** By then nothing more is compared: to judge a plan takes time. */
  private static final Duration LATE = Duration.ofMillis(-500);

  private final Planner planner;
  private final Watch watch;
  private final Limits limits;
  private final long start = System.nanoTime();
  private final Looks looks;
  private final Looseness looseness = new Looseness();
  private final Map<World, Integer> numbers = new HashMap<>();

  /** To compare whole worlds takes time. */
  private final IdentityHashMap<World, Integer> seen = new IdentityHashMap<>();

  private final Map<Integer, Inquiry> inquiries = new HashMap<>();
  private final Set<Integer> asked = new HashSet<>();
  private final List<Plan> known = new ArrayList<>();
  private Optional<Answer.Impossible> clash = Optional.empty();

  /**
   * No question yet.
   *
   * @param limits time for all questions together; rounds for each one, which is then looked at
   *     once, so that the answers are always the same
   */
  public Questions(Planner planner, Limits limits, Watch watch) {
    this.planner = planner;
    this.limits = limits;
    this.watch = watch;
    looks = new Looks(watch, this::over);
  }

  /** What clashed where a question without any plan before was impossible, or it was asked. */
  public Optional<Answer.Impossible> clash() {
    return clash;
  }

  /** Looks for what clashes where a world is impossible, which takes up to twenty seconds. */
  void findClash(World world) {
    Inquiry inquiry = inquiry(world);
    if (clash.isEmpty() && inquiry.isImpossible()) {
      clash = Optional.of(inquiry.clash());
    }
  }

  /** Is time up, or were we asked to stop? */
  public boolean over() {
    return watch.stop() || left().isNegative() || left().isZero();
  }

  /** The first world allows all that the second does, at no more money. */
  void looser(World one, World other) {
    looseness.state(id(one), id(other));
  }

  /**
   * Looks for the bound of a large world beside whatever is asked, since it holds for many.
   *
   * @param share of all time
   */
  void boundBeside(World world, double share) {
    looks.share(inquiry(world), millis(share));
  }

  /** What one order a month comes to, in what time is left. */
  Optional<Answer.Judged> monthly(World world) {
    return over()
        ? Optional.empty()
        : new Habits(planner).monthly(world, new Limits(left(), limits.rounds()), watch);
  }

  /** Share of all time that is left. */
  double shareLeft() {
    return Math.max(0, (double) left().toMillis() / limits.millis());
  }

  private Duration left() {
    return limits.time().minusNanos(System.nanoTime() - start);
  }

  /** Takes up a plan from elsewhere, or says that the next questions are nearest to it. */
  public void learn(Plan plan) {
    known.remove(plan);
    known.add(0, plan);
    if (known.size() > MOST_KNOWN) {
      known.remove(MOST_KNOWN);
    }
  }

  /** The answer, looked for where it was not asked before; empty without one, or out of time. */
  public Optional<Solved> ask(World world, double share) {
    return again(world, asked.contains(id(world)) ? 0 : share);
  }

  /** The answer after another look, which goes on from all that was found since; never worse. */
  public Optional<Solved> again(World world, double share) {
    if (!over() || asked.contains(id(world))) {
      learnAll(inquiry(world));
    }
    return look(world, new Looks.Length(millis(share), known.isEmpty()));
  }

  /**
   * The answer of a search that begins as if nothing were known: one that begins with a good plan
   * seldom comes upon those that are quite unlike it. What was known counts all the same.
   */
  Optional<Solved> askAfresh(World world, double share) {
    if (!over()) {
      try (Inquiry fresh = new Inquiry(world, limits.rounds())) {
        looks.look(fresh, new Looks.Length(millis(share), false));
        fresh.answer().ifPresent(it -> learn(it.plan().plan()));
        inquiry(world).isNoBetterThan(fresh);
      }
      asked.add(id(world));
    }
    return again(world, 0);
  }

  /**
   * The answer after one long look, which would be worse where it was paused.
   *
   * @param share of all time
   * @param early share of all time after which the best so far is told
   */
  Optional<Solved> atLength(World world, double share, double early, Consumer<Solved> tell) {
    Runnable told = () -> answer(world).ifPresent(tell);
    return look(world, new Looks.Length(millis(share), known.isEmpty(), millis(early), told));
  }

  private long millis(double share) {
    boolean counted = limits.rounds().isPresent() && share > 0;
    return counted ? left().toMillis() : (long) (share * limits.millis());
  }

  private void learnAll(Inquiry inquiry) {
    if (!watch.stop() && left().compareTo(LATE) > 0 && !inquiry.isSettled()) {
      inquiry.learn(known);
    }
  }

  private Optional<Solved> look(World world, Looks.Length length) {
    Inquiry inquiry = inquiry(world);
    boolean isDone = inquiry.isCounted() && asked.contains(id(world));
    if (!over() && length.millis() > 0 && !isDone && !inquiry.isSettled()) {
      asked.add(id(world));
      looks.look(inquiry, length);
      if (known.isEmpty()) {
        findClash(world);
      }
      inquiry.answer().ifPresent(it -> learn(it.plan().plan()));
    }
    return answer(world);
  }

  /**
   * What one answer has over another: with all bounds known by now, and never against what is
   * looser.
   */
  Difference between(Solved before, Solved after) {
    return between(before, after, Set.of());
  }

  /**
   * The same besides what the rules fall short of that one of the two worlds does without.
   *
   * @param away their ids
   */
  Difference between(Solved before, Solved after, Set<String> away) {
    Difference difference = Difference.besides(away, bounded(before), bounded(after));
    return Looseness.isSigned(difference, before, after)
        ? looseness.signed(difference, id(before.world()), id(after.world()))
        : difference;
  }

  private Solved bounded(Solved solved) {
    return answer(solved.world()).map(solved::atBestAs).orElse(solved);
  }

  /** Is there nothing left to look for? */
  boolean isSettled(World world) {
    return inquiry(world).isSettled();
  }

  /** May questions be asked again, up to that share of all time? */
  boolean mayGoOn(double until) {
    return 1 - shareLeft() < until && !over() && limits.rounds().isEmpty();
  }

  /** What is known by now; plans of what is stricter count though no time is left to offer them. */
  Optional<Solved> answer(World world) {
    int id = id(world);
    Inquiry inquiry = inquiry(world);
    if (!inquiry.isSettled()) {
      looseness.looserThan(id).stream()
          .filter(inquiries::containsKey)
          .forEach(looser -> inquiry.isNoBetterThan(inquiries.get(looser)));
    }
    Stream<Solved> stricter =
        looseness.stricterThan(id).stream()
            .flatMap(it -> Stream.ofNullable(inquiries.get(it)))
            .flatMap(it -> it.answer().stream())
            .map(it -> new Solved(world, it));
    return inquiry.answer().map(it -> stricter.reduce(new Solved(world, it), Solved::orBetter));
  }

  private Inquiry inquiry(World world) {
    return inquiries.computeIfAbsent(id(world), id -> new Inquiry(world, limits.rounds()));
  }

  private int id(World world) {
    return seen.computeIfAbsent(
        world, it -> numbers.computeIfAbsent(it, newOne -> numbers.size() + 1));
  }

  @Override
  public void close() {
    inquiries.values().forEach(Inquiry::close);
  }
}
