package io.frostlot.cli;

import io.frostlot.app.MakePlan;
import io.frostlot.app.Questions;
import io.frostlot.plan.Answer;
import io.frostlot.program.Limits;
import io.frostlot.program.Watch;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What every command that plans again and again is told, and what it ends with. */
@Command(
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:an answer",
      "1:a fault of the program",
      "2:input problems",
      "3:impossible; says what clashes",
      "4:no plan in the time given"
    })
final class Asked extends Usual {
  private static final int USUAL_SECONDS = 60;
  private static final Duration LEAST = Duration.ofMillis(100);

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = "Time for all plans together (default: 60; with --effort: no limit).")
  private double seconds = Double.NaN;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description =
          "Look at each plan once, for so many rounds of work: the same answers every time"
              + " (default: no limit).")
  private int effort;

  private final long began = System.nanoTime();

  /** Time for all plans together, rounds for each. */
  Limits limits() {
    return limits(time("--seconds", seconds, USUAL_SECONDS, effort), effort);
  }

  MakePlan.Prepared read(Desk desk, Path folder) {
    return new MakePlan(desk.planner())
        .prepare(new MakePlan.Request(folder, profiles(), List.of()));
  }

  /** Says what clashes where there can be no plan, else that none was found; the exit code. */
  int noPlan(Desk desk, Questions questions, MakePlan.Ready ready) {
    return questions
        .clash()
        .map(clash -> new Printer(desk, format()).whole(ready, clash))
        .orElseGet(desk::nothingFound);
  }

  /** What was read before counts as time too. */
  Questions questions(Desk desk, Limits limits) {
    Duration left = limits.time().minusNanos(System.nanoTime() - began);
    return new Questions(
        desk.planner(),
        new Limits(left.compareTo(LEAST) < 0 ? LEAST : left, limits.rounds()),
        new Looking(desk.interruption()::asked, status(desk.terminal())));
  }

  /** Says how many plans were looked at, and the money of the last. */
  private static final class Looking implements Watch {
    private final BooleanSupplier stop;
    private final Progress.Status status;
    private final Clock clock = new Clock();
    private int plans;

    Looking(BooleanSupplier stop, Progress.Status status) {
      this.stop = stop;
      this.status = status;
    }

    @Override
    public boolean stop() {
      return stop.getAsBoolean();
    }

    @Override
    public void found(Answer.WithPlan best) {
      plans++;
      double money = best.plan().standing().money().toDouble();
      status.show(
          clock.time() + String.format(Locale.ROOT, "  plan or bound %d, money %.2f", plans, money),
          true);
    }
  }
}
