package io.frostlot.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

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
        columns(environment.getOrDefault("COLUMNS", "")));
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

  private static int columns(String typed) {
    return typed.matches("[0-9]{1,4}") ? Integer.parseInt(typed) : USUAL_COLUMNS;
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
