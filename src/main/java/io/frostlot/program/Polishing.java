package io.frostlot.program;

import io.frostlot.plan.Answer;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * What the program makes of plans that a local search has found: the same orders with the animals
 * fed anew, and the best of what lies near the packs of the best plan.
 */
final class Polishing {
  /** So many times as long as it takes to feed a plan anew. */
  private static final int SELDOM = 10;

  /** At first the local search meets more meals in that time. */
  private static final long NOT_AT_ONCE_NANOS = TimeUnit.SECONDS.toNanos(8);

  private final Best best;
  private final Solving solving;
  private Optional<Answer.Judged> found = Optional.empty();
  private Optional<Answer.Judged> looked = Optional.empty();
  private long feedFrom = System.nanoTime() + NOT_AT_ONCE_NANOS;

  Polishing(Best best, Solving solving) {
    this.best = best;
    this.solving = solving;
  }

  /** A plan to feed anew in place of the one before. */
  void found(Answer.Judged plan) {
    found = Optional.of(plan);
  }

  /** Was there enough time for others since the last one was fed? */
  boolean isDue() {
    return System.nanoTime() > feedFrom;
  }

  /** Of the newest plan found; empty where there is none. */
  Optional<Answer.Judged> fedAnew() {
    long begin = System.nanoTime();
    Optional<Answer.Judged> fed = found.flatMap(solving::fedAnew);
    found = Optional.empty();
    long end = System.nanoTime();
    feedFrom = end + SELDOM * (end - begin);
    return fed;
  }

  /** Near the best plan, whose neighbours are looked at once; empty where nothing promised more. */
  Optional<Answer.Judged> near() {
    Optional<Answer.Judged> centre = best.plan().filter(plan -> !looked.equals(Optional.of(plan)));
    looked = centre.or(() -> looked);
    return centre.flatMap(solving::near);
  }
}
