package io.frostlot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One keeper's folder and a group's are easily taken for each other. */
class WrongFolderTest {
  private static final String GROUP = "scenarios/tarn-ring";
  private static final String ONE = "scenarios/small-room";
  @TempDir Path folder;

  private static String refused(String command, Path folder) {
    CommandRun run = CommandRun.of(command, folder.toString());
    assertThat(run.exitCode()).isEqualTo(ExitCode.INPUT_PROBLEMS);
    assertThat(run.out()).isEmpty();
    return run.err();
  }

  @Test
  void a_group_is_not_planned_but_shared() {
    for (String command : new String[] {"plan", "freezer", "explain", "compare"}) {
      assertThat(refused(command, Path.of(GROUP)))
          .contains(GROUP + ": found group.json and no scenario.json, expected a scenario folder.")
          .contains("planned with share")
          .contains("1 problem;");
    }
  }

  @Test
  void one_keeper_s_folder_is_not_shared_but_planned() {
    assertThat(refused("share", Path.of(ONE)))
        .contains(ONE + ": found scenario.json and no group.json, expected a group folder.")
        .contains("planned with plan");
  }

  @Test
  void the_folder_of_a_missing_group_file_is_named() {
    assertThat(refused("share", folder)).contains(folder + ": found no group.json, expected");
    Path none = folder.resolve("none");
    assertThat(refused("share", none))
        .contains(none + ": found no such folder, expected a group folder.");
  }
}
