package io.frostlot.cli;

import io.frostlot.app.MakePlan;
import io.frostlot.app.ShareBox;
import io.frostlot.bench.Bench;
import io.frostlot.bench.DrawnGroup;
import io.frostlot.bench.GroupBench;
import io.frostlot.bench.GroupMeasurement;
import io.frostlot.bench.GroupTables;
import io.frostlot.bench.Measurement;
import io.frostlot.bench.Method;
import io.frostlot.bench.RoomSize;
import io.frostlot.bench.Subject;
import io.frostlot.bench.Tables;
import io.frostlot.files.OutFolder;
import io.frostlot.files.Problem;
import io.frostlot.program.Glop;
import io.frostlot.program.Limits;
import io.frostlot.program.Plain;
import io.frostlot.program.ProgramSize;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
            + " folders, beside a plain program; prints the table of medians. With --group: how"
            + " groups of keepers drawn from seeds order together.")
final class BenchCommand implements Callable<Integer> {
  private static final int QUICK_SECONDS = 3;
  private static final int QUICK_GROUP_SECONDS = 10;
  private static final int MOST_SECONDS = 100_000;
  private final Desk desk;
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--size",
      paramLabel = "SIZE",
      split = ",",
      description =
          "Sizes of drawn rooms: ${COMPLETION-CANDIDATES}; with --group of each member's room.")
  private List<RoomSize> sizes = new ArrayList<>();

  @Option(
      names = "--seed",
      paramLabel = "N",
      split = ",",
      description =
          "Seeds of drawn rooms (default: 1,2,3,4,5; with --quick: 1; with --group: 1,2).")
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
      description =
          "Most seconds for a room, or for the joint plan of a group (default: ${DEFAULT-VALUE}).")
  private int seconds;

  @Option(
      names = "--plain-seconds",
      paramLabel = "N",
      defaultValue = "300",
      description = "Most seconds of the plain program for a room (default: ${DEFAULT-VALUE}).")
  private int plainSeconds;

  @Option(
      names = "--quick",
      description = "Very small rooms and a few seconds, unless other ones are given.")
  private boolean quick;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Write DIR/bench.csv and DIR/bench.md too (groups.csv, groups.md); made where missing.")
  private Path out = Usual.NOT_GIVEN;

  @Mixin private GroupOptions groups = new GroupOptions();

  BenchCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    if (least(seconds) || least(plainSeconds)) {
      throw new ParameterException(
          spec.commandLine(), "--seconds, --plain-seconds: expected 1 to " + MOST_SECONDS);
    }
    groups.check(folders);
    List<Problem> unwritable = Usual.refusals(out).toList();
    if (!unwritable.isEmpty()) {
      return desk.refuse(unwritable, "Nothing was measured.");
    }
    if (groups.areAsked()) {
      return measureGroups();
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
    return time(given, QUICK_SECONDS);
  }

  private Duration time(int given, int quickly) {
    return Duration.ofSeconds(quick ? Math.min(quickly, given) : given);
  }

  private int measure(List<Subject> subjects) {
    Bench bench = new Bench(methods(), desk.interruption()::asked);
    OptionalDouble cold = bench.cold(subjects.get(0));
    List<Measurement> measured =
        bench.measure(subjects, it -> desk.terminal().err().println(it.says()));
    Tables tables =
        new Tables(LocalDate.now(ZoneId.systemDefault()), Fault.version(), cold, measured);
    return show("bench", tables.csv(), tables.markdown());
  }

  private int measureGroups() {
    List<DrawnGroup> drawn =
        groups.drawn(
            sizes.isEmpty() ? List.of(quick ? RoomSize.XS : RoomSize.MEMBER) : sizes,
            !seeds.isEmpty() ? seeds : quick ? List.of(1L) : List.of(1L, 2L));
    Limits joint = new Limits(time(seconds, QUICK_GROUP_SECONDS), OptionalInt.empty());
    Optional<Limits> subgroups =
        groups
            .waysSeconds()
            .map(most -> new Limits(time(most, QUICK_GROUP_SECONDS), OptionalInt.empty()));
    GroupBench bench =
        new GroupBench(
            new ShareBox(desk.planner(), new Glop()),
            new ShareBox.Work(joint, subgroups),
            desk.interruption()::asked);
    List<GroupMeasurement> measured =
        bench.measure(drawn, it -> desk.terminal().err().println(it.says()));
    GroupTables tables =
        new GroupTables(
            LocalDate.now(ZoneId.systemDefault()), Fault.version(), joint.time(), measured);
    return show("groups", tables.csv(), tables.markdown());
  }

  private int show(String name, String csv, String markdown) {
    desk.terminal().out().print(markdown);
    desk.terminal().out().flush();
    if (out.equals(Usual.NOT_GIVEN)) {
      return ExitCode.PLAN;
    }
    Optional<Problem> problem =
        new OutFolder(out).write(Map.of(name + ".csv", csv, name + ".md", markdown));
    problem.ifPresent(desk.terminal().err()::println);
    return problem.isPresent() ? ExitCode.INPUT_PROBLEMS : ExitCode.PLAN;
  }
}
