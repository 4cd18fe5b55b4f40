package io.frostlot.program;

import io.frostlot.plan.Answer;
import io.frostlot.plan.Plan;
import io.frostlot.plan.World;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One world that is looked at again and again, now for plans, now for how good a plan can be: each
 * half goes on where it stopped, and takes up what is known of worlds that resemble this one.
 */
public final class Inquiry implements AutoCloseable {
  private final World world;
  private final KnownPlans plans;
  private final Best best;
  private final Map<Half, Paced> halves;
  private final boolean counted;
  private final Set<Plan> offered = new HashSet<>();
  private List<Plan> resembling = List.of();

  /** What is looked for, each in a thread of its own. */
  public enum Half {
    PLANS,
    BOUND
  }

  /**
   * Of a world of which nothing is known yet.
   *
   * @param rounds of work of each half, as in {@link Limits}
   */
  public Inquiry(World world, OptionalInt rounds) {
    this.world = world;
    counted = rounds.isPresent();
    plans = new KnownPlans(world);
    best = Best.in(world);
    halves =
        Map.of(
            Half.PLANS,
            new Paced(
                left -> new Improving(world, plans.beginning(resembling), best, left, rounds)),
            Half.BOUND,
            new Paced(left -> bounding(new Bounding(world, best, left, rounds))));
  }

  /** One after the other they come to the same plan each time, without a choice among equals. */
  private Runnable bounding(Bounding bounding) {
    return counted ? bounding::prove : bounding;
  }

  public World world() {
    return world;
  }

  /** Are its rounds of work counted? Then its halves work one after the other, each once. */
  public boolean isCounted() {
    return counted;
  }

  /** Is it so large that how good a plan can be stays open for long? */
  public boolean isLarge() {
    return world.slots().size() > Bounding.FEW_SLOTS;
  }

  /**
   * Takes up plans of worlds that resemble this one.
   *
   * @param known the nearest first: where none can be followed, its deliveries are looked at first
   */
  public void learn(List<Plan> known) {
    resembling = List.copyOf(known);
    List<Plan> news = known.stream().filter(offered::add).toList();
    plans.fitting(news).forEach(best::offer);
  }

  /**
   * Takes up what is known of a world that allows all that this one does, at no more money: no plan
   * here is better than the best there.
   */
  public void isNoBetterThan(Inquiry looser) {
    best.proveAs(looser.best);
  }

  /** Lets a half on for so long, beside whoever calls. */
  public void letOn(Half half, long millis) {
    half(half).letOn(millis);
  }

  /** A half waits as soon as it can, and keeps what it knows. */
  public void pause(Half half) {
    half(half).pause();
  }

  /** Does a half wait, has it ended, or not begun? */
  public boolean isAtRest(Half half) {
    return half(half).isAtRest();
  }

  private Paced half(Half half) {
    return halves.get(half);
  }

  /**
   * Is there nothing left to look for? Where equally good plans are being told apart, not yet.
   *
   * @throws IllegalStateException where a half ended by a fault and there is no plan
   */
  public boolean isSettled() {
    if (best.plan().isEmpty() && !best.isImpossible()) {
      halves.values().forEach(Paced::complain);
    }
    boolean telling = half(Half.BOUND).hasBegun() && !best.isSettled() && !isAtRest(Half.BOUND);
    return best.isImpossible() || (best.isProven() && !telling);
  }

  public boolean isImpossible() {
    return best.isImpossible();
  }

  /** What clashes where nothing is possible; takes up to twenty seconds. */
  public Answer.Impossible clash() {
    return new Clash(world).find();
  }

  /** Grows with every better plan or bound. */
  public long news() {
    return best.news();
  }

  /** The best so far. */
  public Optional<Answer.WithPlan> answer() {
    return best.answer();
  }

  /** Ends both halves; the answer stays. */
  @Override
  public void close() {
    halves.values().forEach(Paced::close);
  }
}
