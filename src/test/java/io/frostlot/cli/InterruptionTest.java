package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.frostlot.app.Planner;
import io.frostlot.plan.Answer;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A real process that is asked to end while it plans. */
@Timeout(60)
class InterruptionTest {
  private static final String GOOD = CommandRun.GOOD;

  /** Runs the commands with a planner that goes on for ever. */
  static final class Endless {
    public static void main(String[] arguments) {
      Terminal terminal = Terminal.ofProcess(Map.of());
      Interruption interruption = new Interruption();
      interruption.install();
      Planner planner =
          (world, budget, watch) -> {
            Answer.WithPlan found =
                new Answer.BestFound(OnePackPlanner.judged(world), OptionalDouble.empty());
            if (!arguments[0].equals("empty-handed")) {
              watch.found(found);
            }
            terminal.err().println("planning");
            while (arguments[0].equals("deaf") || !watch.stop()) {
              sleep();
            }
            return arguments[0].equals("empty-handed") ? new Answer.NothingFound() : found;
          };
      Interruption.end(
          Commands.run(planner, terminal, interruption, "plan", GOOD, "--format", "json"));
    }

    private static void sleep() {
      try {
        TimeUnit.MILLISECONDS.sleep(10);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  private record Ended(int exitCode, String out) {}

  private static Ended interrupt(String how) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-cp",
                System.getProperty("java.class.path"),
                Endless.class.getName(),
                how)
            .start();
    BufferedReader err =
        new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8));
    assertThat(err.readLine()).isEqualTo("planning");
    process.toHandle().destroy();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Ended(process.waitFor(), out);
  }

  @ParameterizedTest
  @ValueSource(strings = {"obedient", "deaf"})
  void the_best_plan_found_is_printed(String how) throws IOException, InterruptedException {
    Ended ended = interrupt(how);
    assertThat(ended.exitCode()).isZero();
    assertThat(new ObjectMapper().readTree(ended.out()).get("status").asText())
        .isEqualTo("best-found");
  }

  @Test
  void without_a_plan_it_ends_with_four() throws IOException, InterruptedException {
    Ended ended = interrupt("empty-handed");
    assertThat(ended.exitCode()).isEqualTo(4);
    assertThat(new ObjectMapper().readTree(ended.out()).get("status").asText()).isEqualTo("none");
  }
}
