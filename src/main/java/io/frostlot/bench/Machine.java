package io.frostlot.bench;

import io.frostlot.program.SolverVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** What the measuring was done on, in one line each. */
final class Machine {
  private Machine() {}

  static String says() {
    return "Java "
        + System.getProperty("java.version")
        + ", "
        + SolverVersion.says()
        + "; "
        + System.getProperty("os.name")
        + " "
        + System.getProperty("os.arch")
        + ", "
        + Runtime.getRuntime().availableProcessors()
        + " processors ("
        + processor()
        + "), at most "
        + Runtime.getRuntime().maxMemory() / (1 << 20)
        + " MB for Java";
  }

  private static String processor() {
    try (Stream<String> lines = Files.lines(Path.of("/proc/cpuinfo"))) {
      return lines
          .filter(line -> line.startsWith("model name"))
          .map(line -> line.substring(line.indexOf(':') + 1).strip())
          .findFirst()
          .orElse("unnamed");
    } catch (IOException e) {
      return "unnamed";
    }
  }
}
