package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One folder a case under cases/: its files are laid over the good folder, and expected.txt says
 * what comes out, either the messages or "the same scenario".
 */
class CasesTest {
  static Stream<String> names() throws IOException {
    try (Stream<Path> cases = Files.list(Samples.folder("cases"))) {
      return cases.map(path -> path.getFileName().toString()).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void answers_as_expected(String name, @TempDir Path folder) {
    Path files = Samples.folder("cases").resolve(name);
    Samples.goodCopy(folder);
    Samples.copy(files, folder);

    Reading reading = ScenarioFolder.read(folder);

    String expected = Samples.text(files.resolve("expected.txt"));
    if (expected.equals("the same scenario\n")) {
      String good = Samples.accepted(ScenarioFolder.read(Samples.folder("good"))).digest();
      assertThat(Samples.accepted(reading).digest()).isEqualTo(good);
    } else {
      assertThat(String.join("\n", Samples.messages(reading)) + "\n").isEqualTo(expected);
    }
  }
}
