package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/**
 * Solving again and again in one process does not take more and more memory from the system: the
 * solvers' models live outside the heap. {@code -Dfrostlot.solves=200} solves more often.
 */
class NativeMemoryTest {
  private static final int SOLVES = Integer.getInteger("frostlot.solves", 30);
  private static final long MOST_KB = 32_000;

  /** Linux says what a process has in memory (proc(5), VmRSS). */
  @Test
  @EnabledOnOs(OS.LINUX)
  void memory_outside_the_heap_does_not_grow_with_the_number_of_solves()
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xms128m",
                "-Xmx128m",
                "-XX:+AlwaysPreTouch",
                "-cp",
                System.getProperty("java.class.path"),
                ManySolves.class.getName(),
                String.valueOf(SOLVES))
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).isZero();
    List<Long> kb = out.lines().map(line -> Long.valueOf(line.strip())).toList();
    assertThat(kb).as("before and after").hasSize(2);
    assertThat(kb.get(1) - kb.get(0)).as("kB more after %d solves", SOLVES).isLessThan(MOST_KB);
  }
}
