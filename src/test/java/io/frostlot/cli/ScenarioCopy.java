package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.frostlot.files.Samples;
import io.frostlot.program.Engine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A copy of one of the scenario folders that tests plan with the command a user types. */
record ScenarioCopy(Path folder) {
  private static final Path FOLDERS = Path.of("src/test/resources/io/frostlot");

  static ScenarioCopy of(String name, Path into) {
    Samples.copy(FOLDERS.resolve(name), into);
    return new ScenarioCopy(into);
  }

  /** Writes a file, which may be there already. */
  ScenarioCopy with(String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text);
    return this;
  }

  /** Changes a word in a file, which must be there. */
  ScenarioCopy replacing(String file, String word, String other) throws IOException {
    String text = Files.readString(folder.resolve(file));
    assertThat(text).contains(word);
    return with(file, text.replace(word, other));
  }

  /** What the command prints as JSON of a plan that is proven best and meets every meal. */
  JsonNode plan() throws IOException {
    CommandRun run =
        CommandRun.of(
            Engine::solve,
            false,
            "plan",
            folder.toString(),
            "--format",
            "json",
            "--seconds=600",
            "--plan-only");
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isEqualTo(ExitCode.PLAN);
    JsonNode plan = new ObjectMapper().readTree(run.out());
    assertThat(plan.get("status").asText()).isEqualTo("proven");
    assertThat(plan.get("unmetMeals")).isEmpty();
    return plan;
  }

  String cost() throws IOException {
    return plan().get("cost").asText();
  }
}
