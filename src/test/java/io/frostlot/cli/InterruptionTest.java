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
import java.util.stream.Collectors;
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
          Commands.run(planner, terminal, interruption, "plan", GOOD, "--format", arguments[1]));
    }

    private static void sleep() {
      try {
        TimeUnit.MILLISECONDS.sleep(10);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  /** Looks for findings in vain, as the commands do that plan again and again. */
  static final class InVain {
    public static void main(String[] arguments) {
      Terminal terminal = Terminal.ofProcess(Map.of());
      Interruption interruption = new Interruption();
      interruption.install();
      Desk desk = new Desk(new OnePackPlanner(), terminal, interruption);
      Findings.Layout<String> layout =
          new Findings.Layout<>(
              "head", (found, again) -> found, "end", found -> "json", found -> "csv");
      Findings<String> findings = new Findings<>(desk, Format.TEXT, layout, desk::nothingFound);
      Interruption.end(
          findings.gather(
              found -> {
                terminal.err().println("planning");
                while (arguments[0].equals("deaf") || !interruption.asked()) {
                  Endless.sleep();
                }
              }));
    }
  }

  /** What it wrote on standard error is from being asked to end on. */
  private record Ended(int exitCode, String out, String err) {}

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
    String rest = err.lines().collect(Collectors.joining("\n"));
    return new Ended(process.waitFor(), out, rest);
  }

  private static String status(Ended ended) throws IOException {
    return new ObjectMapper().readTree(ended.out()).get("status").asText();
  }

  @ParameterizedTest
  @ValueSource(strings = {"obedient", "deaf"})
  void the_best_plan_found_is_printed(String how) throws IOException, InterruptedException {
    Ended ended = interruptAfter("planning", Endless.class, how, "json");
    assertThat(ended.exitCode()).isZero();
    assertThat(status(ended)).isEqualTo("best-found");
  }

  @Test
  void without_a_plan_it_ends_with_four() throws IOException, InterruptedException {
    Ended ended = interruptAfter("planning", Endless.class, "empty-handed", "json");
    assertThat(ended.exitCode()).isEqualTo(4);
    assertThat(status(ended)).isEqualTo("none");
    assertThat(interruptAfter("planning", Endless.class, "empty-handed", "text").out())
        .contains("It was stopped before a plan was found.")
        .doesNotContain("--seconds");
  }

  @ParameterizedTest
  @ValueSource(strings = {"obedient", "deaf"})
  void without_findings_it_says_that_it_was_stopped(String how)
      throws IOException, InterruptedException {
    Ended ended = interruptAfter("planning", InVain.class, how);
    assertThat(ended.exitCode()).isEqualTo(4);
    assertThat(ended.out()).isEmpty();
    assertThat(ended.err()).isEqualTo("It was stopped before a plan was found.");
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
