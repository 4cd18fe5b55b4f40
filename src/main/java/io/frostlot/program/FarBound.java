package io.frostlot.program;

import io.frostlot.plan.Answer;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.stream.DoubleStream;

/**
 * A bound that has been so far below the best plan, for some seconds and for as long as the search
 * had taken before, that branching will hardly bring them together: its core is worth more to those
 * who look for plans.
 */
final class FarBound {
  /** Share of the money; bounds that come to a few percent in the end are nearer from the first. */
  private static final double FAR = 0.2;

  private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(5);

  private final Best best;
  private final LongSupplier clock;
  private final long start;
  private Optional<Long> since = Optional.empty();
  private boolean givenUp;

  /**
   * Nothing is far yet.
   *
   * @param clock nanoseconds
   */
  FarBound(Best best, LongSupplier clock) {
    this.best = best;
    this.clock = clock;
    start = clock.getAsLong();
  }

  /** Has it been far for long enough now? Once that is so it stays so. */
  boolean isGivenUp() {
    long now = clock.getAsLong();
    if (best.answer().filter(FarBound::isFar).isEmpty()) {
      since = Optional.empty();
    } else if (since.isEmpty()) {
      since = Optional.of(now);
    }
    givenUp |= since.filter(begin -> now - begin > patience(begin)).isPresent();
    return givenUp;
  }

  /** On a slow machine plans take longer too. */
  private long patience(long begin) {
    return Math.max(PATIENCE_NANOS, begin - start);
  }

  private static boolean isFar(Answer.WithPlan answer) {
    OptionalDouble bound =
        DoubleStream.concat(answer.bound().stream(), answer.boundOfAsGood().stream()).max();
    double money = answer.plan().standing().money().toDouble();
    return bound.isPresent() && bound.getAsDouble() < (1 - FAR) * money;
  }
}
