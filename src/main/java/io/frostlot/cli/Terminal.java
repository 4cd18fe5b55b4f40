package io.frostlot.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Where the program writes.
 *
 * @param out answers
 * @param err problems and progress
 * @param watched is {@code err} a terminal?
 * @param columns width of the window
 */
record Terminal(PrintStream out, PrintStream err, boolean watched, int columns) {
  private static final int USUAL_COLUMNS = 80;
  private static final String CLEAR_LINE = "\r\u001b[K";

  /** That of the process; UTF-8 whatever the locale says. */
  static Terminal ofProcess(Map<String, String> environment) {
    return new Terminal(
        new PrintStream(System.out, false, StandardCharsets.UTF_8),
        new PrintStream(System.err, true, StandardCharsets.UTF_8),
        isTerminal(Path.of("/proc/self/fd/2")),
        columns(
            environment.getOrDefault("COLUMNS", ""),
            isTerminal(Path.of("/proc/self/fd/1")) ? Terminal::windowSize : () -> ""));
  }

  /** Where the system does not tell, it is taken for none; progress can be asked for. */
  private static boolean isTerminal(Path stream) {
    try {
      String target = Files.readSymbolicLink(stream).toString();
      return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }

  /**
   * Width of the window.
   *
   * @param typed what the keeper says, where it is a number
   * @param windowSize else, rows and columns with a space between; anything else is not known
   */
  static int columns(String typed, Supplier<String> windowSize) {
    if (typed.matches("[0-9]{1,4}")) {
      return Integer.parseInt(typed);
    }
    String size = windowSize.get().strip();
    return size.matches("[0-9]+ [1-9][0-9]{0,3}")
        ? Integer.parseInt(size.substring(size.indexOf(' ') + 1))
        : USUAL_COLUMNS;
  }

  /** The exit code of an answer that was printed, or could not be. */
  int printed() {
    return out.checkError() ? ExitCode.FAULT : ExitCode.PLAN;
  }

  /** As the POSIX utility says it; empty where there is none. */
  private static String windowSize() {
    try {
      Process stty =
          new ProcessBuilder("stty", "size")
              .redirectInput(Path.of("/dev/tty").toFile())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      return new String(stty.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return "";
    }
  }

  /** On a terminal one line that changes; elsewhere a line for each piece of news, if wanted. */
  Progress.Status status(boolean wanted) {
    if (watched) {
      return (line, news) -> err.print(CLEAR_LINE + line);
    }
    return wanted
        ? (line, news) -> {
          if (news) {
            err.println(line);
          }
        }
        : Progress.Status.NONE;
  }

  /** Makes room for an answer. */
  void clearStatus() {
    if (watched) {
      err.print(CLEAR_LINE);
      err.flush();
    }
  }
}
