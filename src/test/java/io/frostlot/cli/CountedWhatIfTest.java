package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.frostlot.app.EnginePlanner;
import io.frostlot.files.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Where rounds of work are counted, a what-if says the same every time: the demo, four weeks. */
@Timeout(1200)
class CountedWhatIfTest {
  @TempDir Path folder;

  private CommandRun compared() {
    return CommandRun.of(
        new EnginePlanner(),
        false,
        "compare",
        folder.toString(),
        "--profiles=supplier-profiles",
        "--effort=1",
        "--format=json");
  }

  @Test
  void the_same_effort_gives_the_same_differences() throws IOException {
    Samples.copy(Path.of("scenarios/small-room"), folder);
    Path scenario = folder.resolve("scenario.json");
    String days = "\"planningDays\": 84";
    assertThat(Files.readString(scenario)).contains(days);
    Files.writeString(scenario, Files.readString(scenario).replace(days, "\"planningDays\": 28"));

    CommandRun once = compared();
    assertThat(once.exitCode()).as(once.err()).isZero();
    assertThat(once.out()).contains("\"savesAtLeast\"");
    assertThat(compared().out()).isEqualTo(once.out());
  }
}
