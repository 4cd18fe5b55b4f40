package io.frostlot.cli;

import io.frostlot.app.MakePlan;
import io.frostlot.app.Planner;
import io.frostlot.app.Questions;
import io.frostlot.files.Problem;
import io.frostlot.plan.Answer;
import io.frostlot.program.Watch;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import picocli.CommandLine.Option;

/** What every command that plans again and again is told. */
final class Asked {
  static final Path NOT_GIVEN = Path.of("");
  private static final int MOST_SECONDS = 1_000_000;

  @Option(
      names = "--profiles",
      paramLabel = "DIR",
      description =
          "Folder of supplier profiles; else supplier-profiles in the scenario folder, then"
              + " ../../supplier-profiles beside it.")
  private Path profiles = NOT_GIVEN;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, json or csv (default: ${DEFAULT-VALUE}).")
  private Format format = Format.TEXT;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "60",
      description = "Time for all plans together (default: ${DEFAULT-VALUE}).")
  private double seconds = 60;

  @Option(
      names = "--progress",
      description = "Say how it goes on standard error, even where that is no terminal.")
  private boolean progress;

  Format format() {
    return format;
  }

  /** A complaint about an option; empty where all can be used. */
  List<String> wrong() {
    return seconds > 0 && seconds <= MOST_SECONDS
        ? List.of()
        : List.of(
            "--seconds: found " + seconds + ", expected a number above 0, at most " + MOST_SECONDS);
  }

  MakePlan.Prepared read(Planner planner, Path folder) {
    List<Path> given = profiles.equals(NOT_GIVEN) ? List.of() : List.of(profiles);
    return new MakePlan(planner).prepare(new MakePlan.Request(folder, given, List.of()));
  }

  Questions questions(Planner planner, Terminal terminal, Interruption interruption) {
    Duration all = Duration.ofMillis((long) Math.ceil(seconds * 1000));
    return new Questions(planner, all, new Looking(interruption::asked, terminal.status(progress)));
  }

  static int refuse(Terminal terminal, List<Problem> problems) {
    problems.forEach(problem -> terminal.err().println(problem));
    terminal
        .err()
        .println(
            (problems.size() == 1 ? "1 problem" : problems.size() + " problems")
                + "; nothing was planned.");
    return ExitCode.INPUT_PROBLEMS;
  }

  /** Says how many plans were looked at, and the money of the last. */
  private static final class Looking implements Watch {
    private final BooleanSupplier stop;
    private final Progress.Status status;
    private final long start = System.nanoTime();
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
      status.show(
          String.format(
              Locale.ROOT,
              "%5.1f s  plan or bound %d, money %.2f",
              (System.nanoTime() - start) / 1e9,
              plans,
              best.plan().standing().money().toDouble()),
          true);
    }
  }
}
