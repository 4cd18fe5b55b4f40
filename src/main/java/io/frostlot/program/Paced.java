package io.frostlot.program;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.LongSupplier;

/**
 * Work in a thread of its own that is let on for a while and then waits, with all that it knows,
 * where it next asks how much time is left. Work that has ended begins anew.
 */
final class Paced implements AutoCloseable {
  /** What has begun is not cut off: a relaxation or a dive without its end was for nothing. */
  private static final long GRACE_MILLIS = 1500;

  private final Function<LongSupplier, Runnable> work;
  private FutureTask<Boolean> task = new FutureTask<>(() -> {}, true);
  private long until = System.nanoTime();
  private boolean begun;
  private boolean waiting;
  private boolean closed;

  /**
   * Work that has not begun.
   *
   * @param work given how many milliseconds are left
   */
  Paced(Function<LongSupplier, Runnable> work) {
    this.work = work;
  }

  /** Lets it on for so long; does not wait for it. */
  synchronized void letOn(long millis) {
    if (closed) {
      return;
    }
    until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
    waiting = false;
    notifyAll();
    if (!begun || task.isDone()) {
      begun = true;
      task = new FutureTask<>(work.apply(this::millisLeft), true);
      Thread thread = new Thread(task, "search");
      thread.setDaemon(true);
      thread.start();
    }
  }

  /** It waits as soon as it can. */
  synchronized void pause() {
    until = System.nanoTime();
  }

  /** Does it wait, or has it ended, or never begun? */
  synchronized boolean isAtRest() {
    return !begun || waiting || task.isDone();
  }

  synchronized boolean hasBegun() {
    return begun;
  }

  /** Throws what the work ended by, if it ended by a fault. */
  synchronized void complain() {
    if (!begun || !task.isDone()) {
      return;
    }
    try {
      task.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the search failed: " + e.getCause(), e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private synchronized long millisLeft() {
    try {
      while (!closed && System.nanoTime() >= until) {
        waiting = true;
        wait();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      closed = true;
    }
    return closed
        ? 0
        : Math.max(GRACE_MILLIS, TimeUnit.NANOSECONDS.toMillis(until - System.nanoTime()));
  }

  @Override
  public synchronized void close() {
    closed = true;
    notifyAll();
  }
}
