package io.frostlot.program;

import java.io.IOException;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedDeque;

/**
 * Solves a {@link Model} with HiGHS, a branch and bound, in a {@linkplain HighsProcess process of
 * its own}: asked in this one, HiGHS cannot be stopped, has no solution when its time is up, and
 * prints on standard output; its log tells the bound that it has. A process is kept for the next
 * question; one that was stopped is ended. Where none can be started, nothing is found.
 */
final class Highs {
  private static final long ASK_AFTER_MILLIS = 15;
  private static final Deque<HighsCall> IDLE = new ConcurrentLinkedDeque<>();

  private Highs() {}

  /** Minimises within the task's budget; hints are not looked at. */
  static Scip.End minimise(Model model, Scip.Task task, BranchAndBound.Watched watched) {
    if (task.budget().milliseconds() < 1) {
      return Scip.End.nothing();
    }
    try {
      Optional<HighsCall> idle = Optional.ofNullable(IDLE.poll());
      HighsCall call = idle.isPresent() ? idle.get() : HighsCall.start();
      try {
        call.ask(model, task);
        return Scip.believed(await(call, model.columns().size(), watched), task);
      } finally {
        if (call.isAlive() && call.end().isPresent()) {
          IDLE.push(call);
        } else {
          call.close();
        }
      }
    } catch (IOException e) {
      return Scip.End.nothing();
    }
  }

  private static Scip.End await(HighsCall call, int columns, BranchAndBound.Watched watched)
      throws IOException {
    HighsAnswers.Found newest = new HighsAnswers.Found(new double[0], 0);
    double bound = Double.NEGATIVE_INFINITY;
    while (true) {
      Optional<Scip.End> end = call.end();
      Optional<HighsAnswers.Found> found = call.answers().newest(newest.end(), columns);
      if (found.isPresent()) {
        newest = found.get();
        watched.better().accept(newest.point());
      }
      double now = call.answers().bound();
      if (now > bound) {
        bound = now;
        watched.rise().accept(bound);
      }
      if (end.isPresent() && (end.get().finished() || end.get().found())) {
        return end.get();
      }
      if (end.isPresent() || !call.isAlive() || watched.stop().getAsBoolean()) {
        return new Scip.End(newest.point(), bound, false);
      }
      call.waitFor(ASK_AFTER_MILLIS);
    }
  }
}
