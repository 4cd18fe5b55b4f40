package io.frostlot.program;

import com.google.ortools.linearsolver.MPSolver;
import com.google.protobuf.Message;
import com.sun.jna.Platform;
import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.File;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A running {@link HighsProcess} and what it tells; it ends with this process at the latest.
 * Nothing that it prints is looked at.
 *
 * @param questions its standard input
 */
record HighsCall(Process process, DataOutputStream questions, HighsAnswers answers)
    implements AutoCloseable {
  private static final long GRACE_MILLIS = 500;

  static HighsCall start() throws IOException {
    HighsAnswers answers = HighsAnswers.create();
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            classPath(),
            HighsProcess.class.getName());
    Process process =
        builder.redirectOutput(Redirect.DISCARD).redirectError(Redirect.DISCARD).start();
    DataOutputStream questions =
        new DataOutputStream(new BufferedOutputStream(process.getOutputStream()));
    return new HighsCall(process, questions, answers);
  }

  /** Where the classes lie that the other process needs. */
  private static String classPath() {
    return Stream.of(HighsProcess.class, MPSolver.class, Message.class, Platform.class)
        .map(type -> type.getProtectionDomain().getCodeSource())
        .map(HighsCall::path)
        .distinct()
        .collect(Collectors.joining(File.pathSeparator));
  }

  private static String path(CodeSource source) {
    try {
      return Path.of(source.getLocation().toURI()).toString();
    } catch (URISyntaxException e) {
      throw new IllegalStateException("classes lie in " + source.getLocation(), e);
    }
  }

  void ask(Model model, Scip.Task task) throws IOException {
    answers.clear();
    HighsQuestion.of(model, task, answers.folder()).write(questions);
    questions.flush();
  }

  /** The last word; empty while it works. */
  Optional<Scip.End> end() throws IOException {
    return answers.end();
  }

  boolean isAlive() {
    return process.isAlive();
  }

  void waitFor(long milliseconds) throws IOException {
    try {
      process.waitFor(milliseconds, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    }
  }

  /** Ends the process, whatever it does; also where this one ends meanwhile nothing is left. */
  @Override
  public void close() throws IOException {
    questions.close();
    waitFor(GRACE_MILLIS);
    process.destroyForcibly().onExit().join();
    answers.delete();
  }
}
