package io.frostlot.cli;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntSupplier;
import java.util.function.Supplier;

/**
 * Ctrl-C, or any other friendly request to end. It asks the work to stop, and gives it a moment to
 * end by itself with the best that was found; where solver threads do not stop, the last resort is
 * run. Either way the program ends without waiting for them.
 */
final class Interruption {
  private static final Duration GRACE = Duration.ofSeconds(3);
  private static final Duration PRINTING = Duration.ofSeconds(30);
  private final AtomicReference<Optional<IntSupplier>> lastResort =
      new AtomicReference<>(Optional.of(() -> ExitCode.NOTHING_IN_TIME));
  private volatile boolean asked;

  /** Looks out for the end of the process; to be called once. */
  void install() {
    Runtime.getRuntime().addShutdownHook(new Thread(this::interrupted, "interruption"));
  }

  boolean asked() {
    return asked;
  }

  /**
   * Does the work.
   *
   * @param resort done instead of all that follows, where the work does not end in time once asked
   *     to; gives the exit code
   */
  <T> T guard(IntSupplier resort, Supplier<T> work) {
    lastResort.set(Optional.of(resort));
    T result = work.get();
    if (lastResort.getAndSet(Optional.empty()).isEmpty()) {
      waitForTheEnd();
    }
    return result;
  }

  /** Leaves at once, with whatever threads still run. */
  static void end(int exitCode) {
    Runtime.getRuntime().halt(exitCode);
  }

  /** The process is left from another thread meanwhile. */
  private static void waitForTheEnd() {
    sleep(Duration.ofDays(1));
  }

  private void interrupted() {
    asked = true;
    sleep(GRACE);
    Optional<IntSupplier> resort = lastResort.getAndSet(Optional.empty());
    if (resort.isPresent()) {
      end(resort.get().getAsInt());
    }
    sleep(PRINTING);
    end(ExitCode.FAULT);
  }

  private static void sleep(Duration time) {
    try {
      Thread.sleep(time.toMillis());
    } catch (InterruptedException e) {
      end(ExitCode.FAULT);
    }
  }
}
