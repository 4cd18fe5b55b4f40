package io.frostlot.app;

import io.frostlot.plan.Gap;
import io.frostlot.plan.Solved;
import io.frostlot.plan.World;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Goes on with those questions whose answers are least certain. */
final class Narrowing {
  private static final double HALF_A_BOX = 0.5;
  private final Questions questions;
  private final double share;
  private final Map<World, Integer> looks = new HashMap<>();

  /**
   * None yet.
   *
   * @param share of all time for one look
   */
  Narrowing(Questions questions, double share) {
    this.questions = questions;
    this.share = share;
  }

  /**
   * Until that share of all time is gone, or all are known to within half a box charge; not at all
   * where rounds of work are counted.
   */
  void run(Collection<World> worlds, double until) {
    while (questions.mayGoOn(until)) {
      Optional<World> widest =
          worlds.stream()
              .filter(world -> unsure(world) > 0)
              .max(Comparator.comparingDouble(this::urgency));
      if (widest.isEmpty()) {
        return;
      }
      questions.again(widest.get(), share);
      looks.merge(widest.get(), 1, Integer::sum);
    }
  }

  /** What was looked at and is still not known waits for others. */
  private double urgency(World world) {
    return unsure(world) / (1 + looks.getOrDefault(world, 0));
  }

  /**
   * Money by which an answer may be off, all of it where no bound is known; 0 where that is fine.
   */
  private double unsure(World world) {
    return questions.isSettled(world)
        ? 0
        : questions.answer(world).map(Narrowing::unsure).orElse(0.0);
  }

  private static double unsure(Solved solved) {
    Optional<Gap> gap = Gap.of(solved.answer());
    boolean fine = gap.filter(it -> it.boxCharges().orElse(1) <= HALF_A_BOX).isPresent();
    return fine ? 0 : gap.map(Gap::amount).orElse(solved.cost());
  }
}
