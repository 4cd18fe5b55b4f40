package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every scenario that comes with the project, and the sample folder, can be read. */
class DemosTest {
  static Stream<Path> scenarios() throws IOException {
    Path shipped = Path.of("scenarios");
    if (!Files.isDirectory(shipped)) {
      return Stream.of(Samples.folder("good"));
    }
    try (Stream<Path> folders = Files.list(shipped)) {
      return Stream.concat(
          Stream.of(Samples.folder("good")),
          folders.filter(Files::isDirectory).sorted().toList().stream()
              .filter(folder -> !isGroup(folder)));
    }
  }

  static Stream<Path> groups() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("scenarios"))) {
      return folders.filter(DemosTest::isGroup).sorted().toList().stream();
    }
  }

  private static boolean isGroup(Path folder) {
    return Files.exists(folder.resolve("group.json"));
  }

  @ParameterizedTest
  @MethodSource("groups")
  void a_group_is_read_without_a_problem(Path folder) {
    assertThat(GroupFolder.read(folder)).isInstanceOf(GroupReading.Accepted.class);
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void is_read_without_a_problem_and_the_same_each_time(Path folder) {
    Reading first = ScenarioFolder.read(folder);
    Reading again = ScenarioFolder.read(folder);

    assertThat(Samples.messages(first)).isEmpty();
    assertThat(Samples.accepted(again).digest()).isEqualTo(Samples.accepted(first).digest());
  }
}
