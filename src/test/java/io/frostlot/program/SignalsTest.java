package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

/**
 * Ctrl-C, as a terminal gives it to all processes of a command (SIGINT, POSIX.1-2017, 11.1.9),
 * while a solver is at work: it is the program's own matter.
 */
@Timeout(120)
@DisabledOnOs(OS.WINDOWS)
class SignalsTest {
  private static final Path STATUS = Path.of("/proc/self/status");
  private static final int SIGINT_MASK = 1 << (2 - 1);
  private static final int ASKED = 7;
  private static final int UNASKED = 8;

  /** Is it a process in the background of a script, so is its Ctrl-C ignored. */
  @BeforeEach
  void signals_are_heeded_here() throws IOException {
    if (Files.exists(STATUS)) {
      long ignored =
          Files.readAllLines(STATUS).stream()
              .filter(line -> line.startsWith("SigIgn:"))
              .mapToLong(line -> Long.parseUnsignedLong(line.substring(7).strip(), 16))
              .findFirst()
              .orElse(0);
      assumeThat(ignored & SIGINT_MASK).isZero();
    }
  }

  /** Solves a program that takes minutes. */
  static final class Solving {
    public static void main(String[] arguments) {
      Runtime.getRuntime().addShutdownHook(new Thread(() -> Runtime.getRuntime().halt(ASKED)));
      Model model = HighsTest.knapsack(60);
      Scip.Task task =
          Scip.Task.of(
              model.objective(Level.MONEY), List.of(), false, Scip.Budget.ofMillis(20_000));
      System.out.println("solving");
      if (arguments[0].equals("slices")) {
        try (Slices slices = new Slices(model, task)) {
          slices.goOn(20_000);
        }
      } else {
        Scip.solve(model, task);
      }
      Runtime.getRuntime().halt(UNASKED);
    }
  }

  private static void interrupt(Process process) throws IOException, InterruptedException {
    int sent = new ProcessBuilder("sh", "-c", "kill -INT " + process.pid()).start().waitFor();
    assertThat(sent).isZero();
  }

  @Test
  void scip_leaves_it_to_the_program() throws IOException, InterruptedException {
    for (String how : List.of("at once", "slices")) {
      Process process =
          new ProcessBuilder(
                  ProcessHandle.current().info().command().orElse("java"),
                  "-cp",
                  System.getProperty("java.class.path"),
                  Solving.class.getName(),
                  how)
              .start();
      try (BufferedReader out =
          new BufferedReader(
              new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
        assertThat(out.readLine()).isEqualTo("solving");
        TimeUnit.SECONDS.sleep(1);
        interrupt(process);
        assertThat(out.lines()).as(how).isEmpty();
        assertThat(process.waitFor()).as(how).isEqualTo(ASKED);
      }
    }
  }

  @Test
  void highs_waits_for_what_the_program_says() throws IOException, InterruptedException {
    Model model = HighsTest.knapsack(60);
    Linear objective = model.objective(Level.MONEY);
    try (HighsCall call = HighsCall.start()) {
      call.ask(model, Scip.Task.of(objective, List.of(), false, Scip.Budget.ofMillis(600_000)));
      while (call.answers().newest(0, model.columns().size()).isEmpty()) {
        call.waitFor(50);
        assertThat(call.isAlive()).isTrue();
      }
      interrupt(call.process());
      call.waitFor(2000);
      assertThat(call.isAlive()).isTrue();
    }
  }
}
