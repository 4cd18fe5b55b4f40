package io.frostlot.cli;

import io.frostlot.files.OutFolder;
import io.frostlot.files.Problem;
import io.frostlot.program.Limits;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What every command that plans is told. */
class Usual {
  static final Path NOT_GIVEN = Path.of("");
  static final int MOST_SECONDS = 1_000_000;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--profiles",
      paramLabel = "DIR",
      description =
          "Folder of supplier profiles; else supplier-profiles in the folder, then"
              + " ../../supplier-profiles beside it.")
  private Path profiles = NOT_GIVEN;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text, json or csv (default: ${DEFAULT-VALUE}).")
  private Format format = Format.TEXT;

  @Option(
      names = "--progress",
      description = "Say how it goes on standard error, even where that is no terminal.")
  private boolean progress;

  /** At most one. */
  final List<Path> profiles() {
    return given(profiles);
  }

  final Format format() {
    return format;
  }

  final Progress.Status status(Terminal terminal) {
    return terminal.status(progress);
  }

  static List<Path> given(Path path) {
    return path.equals(NOT_GIVEN) ? List.of() : List.of(path);
  }

  /** What can be told against a folder to write into before there is anything to write. */
  static Stream<Problem> refusals(Path folder) {
    return given(folder).stream().flatMap(it -> new OutFolder(it).refusal().stream());
  }

  /** A complaint about what was typed; to be thrown. */
  final ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }

  /**
   * The time of an option.
   *
   * @param typed seconds; not a number where none were typed
   * @param usual seconds where neither they nor rounds were typed
   * @param effort rounds, with which there is no limit of time
   */
  final Duration time(String option, double typed, int usual, int effort) {
    double untyped = effort > 0 ? MOST_SECONDS : usual;
    return time(option, Double.isNaN(typed) ? untyped : typed);
  }

  /** The time of an option in seconds. */
  final Duration time(String option, double seconds) {
    if (!(seconds > 0 && seconds <= MOST_SECONDS)) {
      throw wrong(
          option + ": found " + seconds + ", expected a number above 0, at most " + MOST_SECONDS);
    }
    return Duration.ofMillis((long) Math.ceil(seconds * 1000));
  }

  /**
   * A time, and rounds of work.
   *
   * @param effort rounds; 0 where none were typed
   */
  final Limits limits(Duration time, int effort) {
    if (effort < 0) {
      throw wrong("--effort: found " + effort + ", expected a whole number of at least 1");
    }
    return new Limits(time, effort == 0 ? OptionalInt.empty() : OptionalInt.of(effort));
  }
}
