package io.frostlot.cli;

import io.frostlot.app.MakePlan;
import io.frostlot.bench.Bench;
import io.frostlot.bench.Measurement;
import io.frostlot.bench.Method;
import io.frostlot.bench.RoomSize;
import io.frostlot.bench.Subject;
import io.frostlot.bench.Tables;
import io.frostlot.files.Problem;
import io.frostlot.program.Plain;
import io.frostlot.program.ProgramSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code bench}: how fast and how well plans are made, on drawn rooms and on folders. */
@Command(
    name = "bench",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Measures how fast and how well plans are made, on rooms drawn from seeds and on scenario"
            + " folders, beside a plain program; prints the table of medians.")
final class BenchCommand implements Callable<Integer> {
  private static final int QUICK_SECONDS = 3;
  private static final int MOST_SECONDS = 100_000;
  private final Desk desk;
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--size",
      paramLabel = "SIZE",
      split = ",",
      description = "Sizes of drawn rooms: ${COMPLETION-CANDIDATES}.")
  private List<RoomSize> sizes = new ArrayList<>();

  @Option(
      names = "--seed",
      paramLabel = "N",
      split = ",",
      description = "Seeds of drawn rooms (default: 1,2,3,4,5; with --quick: 1).")
  private List<Long> seeds = new ArrayList<>();

  @Option(
      names = "--folder",
      paramLabel = "FOLDER",
      description = "A scenario folder to measure on too; may be given several times.")
  private List<Path> folders = new ArrayList<>();

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "60",
      description = "Most seconds for a room (default: ${DEFAULT-VALUE}).")
  private int seconds;

  @Option(
      names = "--plain-seconds",
      paramLabel = "N",
      defaultValue = "300",
      description = "Most seconds of the plain program for a room (default: ${DEFAULT-VALUE}).")
  private int plainSeconds;

  @Option(
      names = "--quick",
      description = "A very small room and a few seconds, unless other ones are given.")
  private boolean quick;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Write DIR/bench.csv and DIR/bench.md too.")
  private Path out = Usual.NOT_GIVEN;

  BenchCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    if (least(seconds) || least(plainSeconds)) {
      throw new ParameterException(
          spec.commandLine(), "--seconds, --plain-seconds: expected 1 to " + MOST_SECONDS);
    }
    if (sizes.isEmpty() && folders.isEmpty()) {
      sizes.add(quick ? RoomSize.XS : RoomSize.S);
    }
    List<Subject> subjects = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    folders.forEach(folder -> read(folder, subjects, problems));
    if (!problems.isEmpty()) {
      problems.forEach(problem -> desk.terminal().err().println(problem));
      return ExitCode.INPUT_PROBLEMS;
    }
    for (RoomSize size : sizes) {
      usedSeeds().forEach(seed -> subjects.add(Subject.of(size, seed)));
    }
    return measure(subjects);
  }

  private static boolean least(int seconds) {
    return seconds < 1 || seconds > MOST_SECONDS;
  }

  private List<Long> usedSeeds() {
    return !seeds.isEmpty() ? seeds : quick ? List.of(1L) : List.of(1L, 2L, 3L, 4L, 5L);
  }

  private void read(Path folder, List<Subject> subjects, List<Problem> problems) {
    MakePlan.Prepared prepared =
        new MakePlan(desk.planner()).prepare(new MakePlan.Request(folder, List.of(), List.of()));
    if (prepared instanceof MakePlan.Ready ready) {
      subjects.add(
          Subject.of(
              String.valueOf(folder.toAbsolutePath().normalize().getFileName()),
              ready.inputs().world()));
    } else {
      problems.addAll(((MakePlan.Refused) prepared).problems());
    }
  }

  private List<Method> methods() {
    return List.of(
        new Method("frostlot", desk.planner(), ProgramSize::usual, time(seconds)),
        new Method("plain", Plain::solve, ProgramSize::plain, time(plainSeconds)));
  }

  private Duration time(int given) {
    return Duration.ofSeconds(quick ? Math.min(QUICK_SECONDS, given) : given);
  }

  private int measure(List<Subject> subjects) {
    Bench bench = new Bench(methods(), desk.interruption()::asked);
    OptionalDouble cold = bench.cold(subjects.get(0));
    List<Measurement> measured =
        bench.measure(subjects, it -> desk.terminal().err().println(it.says()));
    Tables tables =
        new Tables(LocalDate.now(ZoneId.systemDefault()), Fault.version(), cold, measured);
    desk.terminal().out().print(tables.markdown());
    desk.terminal().out().flush();
    return out.equals(Usual.NOT_GIVEN) ? ExitCode.PLAN : write(tables);
  }

  private int write(Tables tables) {
    try {
      Files.createDirectories(out);
      Files.writeString(out.resolve("bench.csv"), tables.csv());
      Files.writeString(out.resolve("bench.md"), tables.markdown());
      return ExitCode.PLAN;
    } catch (IOException e) {
      desk.terminal().err().println(out + ": could not be written: " + e.getMessage());
      return ExitCode.INPUT_PROBLEMS;
    }
  }
}
