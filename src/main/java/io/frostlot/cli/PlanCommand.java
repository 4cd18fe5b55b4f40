package io.frostlot.cli;

import io.frostlot.app.Habits;
import io.frostlot.app.MakePlan;
import io.frostlot.app.Planner;
import io.frostlot.files.Problem;
import io.frostlot.plan.Answer;
import io.frostlot.program.Limits;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code plan FOLDER}: what to order, how many packs, from whom, by which date. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Makes the order plan of a scenario folder and prints it.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:a plan",
      "1:a fault of the program",
      "2:input problems",
      "3:impossible; says what clashes",
      "4:no plan in the time given"
    })
final class PlanCommand implements Callable<Integer> {
  private static final Path NOT_GIVEN = Path.of("");
  private static final int MOST_SECONDS = 1_000_000;
  private static final int USUAL_SECONDS = 30;
  private final Planner planner;
  private final Terminal terminal;
  private final Interruption interruption;
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FOLDER", description = "The scenario folder.")
  private Path folder = NOT_GIVEN;

  @Option(
      names = "--profiles",
      paramLabel = "DIR",
      description =
          "Folder of supplier profiles; else supplier-profiles in FOLDER, then"
              + " ../../supplier-profiles beside it.")
  private Path profiles = NOT_GIVEN;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, json or csv (default: ${DEFAULT-VALUE}).")
  private Format format = Format.TEXT;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "With csv: write an order sheet per supplier into this folder.")
  private Path out = NOT_GIVEN;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = "Stop looking after so many seconds (default: 30; with --effort: no limit).")
  private double seconds = Double.NaN;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description =
          "Stop after so many rounds of work: the same answer every time (default: no limit).")
  private int effort;

  @Option(
      names = "--since",
      paramLabel = "PLAN.json",
      description = "Show what differs from this earlier plan.")
  private Path since = NOT_GIVEN;

  @Option(
      names = "--no-habits",
      description = "With text: do not compare with habits, which takes up to half the time again.")
  private boolean withoutHabits;

  @Option(
      names = "--progress",
      description = "Say how it goes on standard error, even where that is no terminal.")
  private boolean progress;

  PlanCommand(Planner planner, Terminal terminal, Interruption interruption) {
    this.planner = planner;
    this.terminal = terminal;
    this.interruption = interruption;
  }

  @Override
  public Integer call() {
    Limits limits = limits();
    if (!out.equals(NOT_GIVEN) && format != Format.CSV) {
      throw wrong("--out goes with --format csv");
    }
    if (!since.equals(NOT_GIVEN) && format == Format.CSV) {
      throw wrong("--since goes with --format text or json");
    }
    MakePlan makePlan = new MakePlan(planner);
    MakePlan.Prepared prepared =
        makePlan.prepare(new MakePlan.Request(folder, given(profiles), given(since)));
    if (prepared instanceof MakePlan.Refused refused) {
      return refuse(refused.problems());
    }
    return plan(makePlan, (MakePlan.Ready) prepared, limits);
  }

  private int plan(MakePlan makePlan, MakePlan.Ready ready, Limits limits) {
    long start = System.nanoTime();
    Progress.Status status = terminal.status(progress);
    Progress watch = new Progress(ready.inputs().world(), interruption::asked, status);
    Printer printer = new Printer(terminal, format, given(out));
    Answer answer =
        interruption.guard(
            () -> printer.print(ready, watch.bestOrNothing()),
            () -> makePlan.plan(ready, limits, watch));
    Duration took = Duration.ofNanos(System.nanoTime() - start);
    int exitCode = printer.print(ready, answer);
    boolean compared = format == Format.TEXT && !withoutHabits && !interruption.asked();
    if (compared && answer instanceof Answer.WithPlan found) {
      printer.print(
          ready,
          found,
          interruption.guard(
              () -> exitCode,
              () ->
                  new Habits(planner)
                      .compare(
                          ready.inputs().world(),
                          found,
                          Habits.share(limits, took),
                          new Comparing(interruption::asked, status))));
    }
    return exitCode;
  }

  private static List<Path> given(Path path) {
    return path.equals(NOT_GIVEN) ? List.of() : List.of(path);
  }

  private int refuse(List<Problem> problems) {
    problems.forEach(problem -> terminal.err().println(problem));
    terminal
        .err()
        .println(
            (problems.size() == 1 ? "1 problem" : problems.size() + " problems")
                + "; nothing was planned.");
    return ExitCode.INPUT_PROBLEMS;
  }

  private Limits limits() {
    double most = !Double.isNaN(seconds) ? seconds : effort > 0 ? MOST_SECONDS : USUAL_SECONDS;
    if (!(most > 0 && most <= MOST_SECONDS)) {
      throw wrong(
          "--seconds: found " + seconds + ", expected a number above 0, at most " + MOST_SECONDS);
    }
    if (effort < 0) {
      throw wrong("--effort: found " + effort + ", expected a whole number of at least 1");
    }
    Duration time = Duration.ofMillis((long) Math.ceil(most * 1000));
    return new Limits(time, effort == 0 ? OptionalInt.empty() : OptionalInt.of(effort));
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
