package io.frostlot.cli;

import io.frostlot.files.Problem;
import io.frostlot.files.WholeFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** What a command prints, as a page to print. */
final class PageOption {
  @Option(
      names = "--page",
      paramLabel = "FILE.html",
      description =
          "Also write the letter as a page to print, whatever the format, into a folder that is"
              + " there.")
  private Path file = Usual.NOT_GIVEN;

  /** What can be told before there is anything to write, and after it what else was found. */
  List<Problem> problemsAnd(List<Problem> others) {
    return problemsAnd(Usual.NOT_GIVEN, others);
  }

  /**
   * The same.
   *
   * @param folder that is written into too, if given
   */
  List<Problem> problemsAnd(Path folder, List<Problem> others) {
    return Stream.of(
            Usual.given(file).stream().flatMap(path -> new WholeFile(path).refusal().stream()),
            Usual.refusals(folder),
            others.stream())
        .flatMap(problems -> problems)
        .toList();
  }

  /** Writes it, if it is wanted; returns the exit code that there was, or that of a problem. */
  int write(Terminal terminal, Supplier<String> html, int exitCode) {
    Optional<Problem> problem =
        Usual.given(file).stream()
            .flatMap(path -> new WholeFile(path).write(html.get()).stream())
            .findFirst();
    problem.ifPresent(terminal.err()::println);
    return problem.isPresent() && exitCode == ExitCode.PLAN ? ExitCode.INPUT_PROBLEMS : exitCode;
  }
}
