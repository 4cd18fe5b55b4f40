package io.frostlot.bench;

import java.time.Duration;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * Solver threads that a measured run leaves behind.
 *
 * @param before threads that ran before it
 */
record LeftBehind(Set<Thread> before) {
  private static final String NAME = "search";

  /** To be asked after a run that begins now. */
  static LeftBehind now() {
    return new LeftBehind(running());
  }

  private static Set<Thread> running() {
    return Set.copyOf(Thread.getAllStackTraces().keySet());
  }

  /** Waits for them, but no longer than a run may take. */
  void settle(Duration most) {
    long end = System.nanoTime() + most.toNanos();
    while (isBusy() && System.nanoTime() < end) {
      try {
        TimeUnit.MILLISECONDS.sleep(50);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }

  private boolean isBusy() {
    return running().stream()
        .anyMatch(thread -> thread.getName().equals(NAME) && !before.contains(thread));
  }
}
