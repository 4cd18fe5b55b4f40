package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.frostlot.app.Planner;
import io.frostlot.plan.Answer;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A real process that is asked to end while it plans. */
@Timeout(1200)
class InterruptionTest {
  private static final String GOOD = CommandRun.GOOD;

  /** Runs the commands with a planner that goes on for ever. */
  static final class Endless {
    public static void main(String[] arguments) {
      Terminal terminal = Terminal.ofProcess(Map.of());
      Interruption interruption = new Interruption();
      interruption.install();
      Planner planner =
          (world, limits, watch) -> {
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

  /** Asks a process to end once its standard error holds the word. */
  private static Ended interruptAfter(String word, Class<?> program, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(ProcessHandle.current().info().command().orElse("java"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), program.getName()));
    command.addAll(List.of(arguments));
    Process process = new ProcessBuilder(command).start();
    BufferedReader err =
        new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8));
    String line = err.readLine();
    while (line != null && !line.contains(word)) {
      line = err.readLine();
    }
    assertThat(line).contains(word);
    process.toHandle().destroy();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Ended(process.waitFor(), out);
  }

  private static String status(Ended ended) throws IOException {
    return new ObjectMapper().readTree(ended.out()).get("status").asText();
  }

  @ParameterizedTest
  @ValueSource(strings = {"obedient", "deaf"})
  void the_best_plan_found_is_printed(String how) throws IOException, InterruptedException {
    Ended ended = interruptAfter("planning", Endless.class, how);
    assertThat(ended.exitCode()).isZero();
    assertThat(status(ended)).isEqualTo("best-found");
  }

  @Test
  void without_a_plan_it_ends_with_four() throws IOException, InterruptedException {
    Ended ended = interruptAfter("planning", Endless.class, "empty-handed");
    assertThat(ended.exitCode()).isEqualTo(4);
    assertThat(status(ended)).isEqualTo("none");
  }

  /** The demo over ten months: much more than can be proven in a few seconds. */
  @Test
  void the_engine_is_left_behind(@TempDir Path folder) throws IOException, InterruptedException {
    Path demo = Path.of("scenarios/small-room");
    for (String file : List.of("scenario.json", "animals.csv", "freezers.csv")) {
      String text = Files.readString(demo.resolve(file));
      Files.writeString(
          folder.resolve(file),
          text.replaceAll("\"planningDays\": *\\d+", "\"planningDays\": 300"));
    }
    long start = System.nanoTime();
    Ended ended =
        interruptAfter(
            "best",
            Main.class,
            "plan",
            folder.toString(),
            "--profiles",
            "supplier-profiles",
            "--format",
            "json",
            "--progress",
            "--seconds",
            "1000");
    assertThat(ended.exitCode()).isZero();
    assertThat(status(ended)).isEqualTo("best-found");
    assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(50));
  }
}
