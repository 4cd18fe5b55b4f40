package io.frostlot.app;

import io.frostlot.program.Inquiry;
import io.frostlot.program.Watch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * Looks at one question after another: one core looks for plans of the question asked, the other
 * for how good plans can be, first of those questions whose bounds hold for many.
 */
final class Looks {
  private static final long SLICE_MILLIS = 2000;
  private static final long ASK_AFTER_MILLIS = 20;
  private final Watch watch;
  private final BooleanSupplier over;
  private final List<Shared> shared = new ArrayList<>();
  private long told;

  /** A question whose bound holds for others, how long it may be looked at, and was. */
  private static final class Shared {
    private final Inquiry inquiry;
    private final long most;
    private long spent;

    Shared(Inquiry inquiry, long most) {
      this.inquiry = inquiry;
      this.most = most;
    }

    private double used() {
      return (double) spent / most;
    }
  }

  /**
   * No look yet.
   *
   * @param over is there no time left at all?
   */
  Looks(Watch watch, BooleanSupplier over) {
    this.watch = watch;
    this.over = over;
  }

  /** The bound of this one is looked for beside whatever is asked, for so long in all. */
  void share(Inquiry inquiry, long millis) {
    if (inquiry.isLarge()) {
      shared.add(new Shared(inquiry, Math.max(1, millis)));
    }
  }

  /**
   * How long to look.
   *
   * @param millis in all
   * @param untilFound even longer where there is no plan yet
   * @param earlyMillis after which the first plan is told
   * @param early told then, while the search goes on: to pause it costs what it was about
   */
  record Length(long millis, boolean untilFound, long earlyMillis, Runnable early) {
    /** Of which nothing is told early. */
    Length(long millis, boolean untilFound) {
      this(millis, untilFound, Long.MAX_VALUE, () -> {});
    }
  }

  /** Looks at a question for so long, or until it is settled, or until its rounds are done. */
  void look(Inquiry asked, Length length) {
    if (asked.isCounted()) {
      inTurn(asked, length.millis());
      return;
    }
    long begun = now();
    long end = begun + length.millis();
    boolean early = false;
    asked.letOn(Inquiry.Half.PLANS, length.millis());
    Beside beside = new Beside(asked, end);
    while (!over.getAsBoolean() && !asked.isSettled() && !beside.isAllEnded()) {
      boolean late = now() >= end && asked.isAtRest(Inquiry.Half.PLANS);
      if (late && (!length.untilFound() || asked.answer().isPresent())) {
        break;
      }
      if (late) {
        asked.letOn(Inquiry.Half.PLANS, SLICE_MILLIS);
      }
      if (!early && now() - begun >= length.earlyMillis() && asked.answer().isPresent()) {
        early = true;
        length.early().run();
      }
      beside.goOn();
      tell(asked);
      pause();
    }
    asked.pause(Inquiry.Half.PLANS);
    beside.end();
    tell(asked);
  }

  /** All rounds for plans, then all for the bound: by no clock but that of all time. */
  private void inTurn(Inquiry asked, long millis) {
    for (Inquiry.Half half : Inquiry.Half.values()) {
      asked.letOn(half, millis);
      while (!over.getAsBoolean() && !asked.isAtRest(half)) {
        tell(asked);
        pause();
      }
    }
    tell(asked);
  }

  /** The bound that is looked for beside the plans of a question. */
  private final class Beside {
    private final Inquiry asked;
    private final long end;
    private Inquiry bounded;
    private List<Shared> from = List.of();
    private long since;

    Beside(Inquiry asked, long end) {
      this.asked = asked;
      this.end = end;
      bounded = asked;
      begin();
    }

    /** A shared bound begins once there is a plan, from which it learns what need not be shown. */
    private void begin() {
      List<Shared> open =
          shared.stream().filter(it -> it.spent < it.most && !it.inquiry.isSettled()).toList();
      from =
          asked.answer().isEmpty()
              ? List.of()
              : open.stream().min(Comparator.comparingDouble(Shared::used)).stream().toList();
      asked
          .answer()
          .ifPresent(it -> from.forEach(one -> one.inquiry.learn(List.of(it.plan().plan()))));
      bounded = from.isEmpty() ? asked : from.get(0).inquiry;
      since = now();
      long left = Math.max(1, end - since);
      bounded.letOn(Inquiry.Half.BOUND, open.isEmpty() ? left : Math.min(SLICE_MILLIS, left));
    }

    void goOn() {
      if (bounded.isAtRest(Inquiry.Half.BOUND) && now() < end && !isAllEnded()) {
        end();
        begin();
      }
    }

    /** Both halves of the question asked have ended before their time. */
    boolean isAllEnded() {
      return from.isEmpty()
          && now() < end
          && asked.isAtRest(Inquiry.Half.BOUND)
          && asked.isAtRest(Inquiry.Half.PLANS);
    }

    void end() {
      bounded.pause(Inquiry.Half.BOUND);
      long spent = now() - since;
      from.forEach(it -> it.spent += spent);
    }
  }

  private void tell(Inquiry asked) {
    if (asked.news() != told) {
      told = asked.news();
      asked.answer().ifPresent(watch::found);
    }
  }

  private static long now() {
    return TimeUnit.NANOSECONDS.toMillis(System.nanoTime());
  }

  private static void pause() {
    try {
      TimeUnit.MILLISECONDS.sleep(ASK_AFTER_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
