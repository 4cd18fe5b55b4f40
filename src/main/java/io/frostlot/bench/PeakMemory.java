package io.frostlot.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalLong;
import java.util.stream.Stream;

/**
 * The most memory that this process has held, Java's and the solver's, where Linux tells it (VmHWM
 * in /proc/self/status); counted anew from {@link #reset} on.
 */
final class PeakMemory {
  private static final Path STATUS = Path.of("/proc/self/status");
  private static final Path CLEAR = Path.of("/proc/self/clear_refs");

  private PeakMemory() {}

  /** Where that is not allowed the peak is that of the process so far. */
  @SuppressWarnings("ExplicitGC") // what earlier runs left behind is not this run's
  static void reset() {
    System.gc();
    try {
      Files.writeString(CLEAR, "5");
    } catch (IOException e) {
      return;
    }
  }

  static OptionalLong megabytes() {
    try (Stream<String> lines = Files.lines(STATUS)) {
      return lines
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")) / 1024)
          .findFirst();
    } catch (IOException e) {
      return OptionalLong.empty();
    }
  }
}
