package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class OutFolderTest {
  private static final Map<String, String> TWO = Map.of("a.csv", "one", "b.csv", "two");
  @TempDir private Path folder;

  @Test
  void isMadeWhereItIsMissing() throws IOException {
    Path place = folder.resolve("new/sheets");
    assertThat(new OutFolder(place).refusal()).isEmpty();
    assertThat(place.getParent()).doesNotExist();

    assertThat(new OutFolder(place).write(TWO)).isEmpty();

    assertThat(place.resolve("a.csv")).hasContent("one");
    assertThat(place.resolve("b.csv")).hasContent("two");
    try (Stream<Path> all = Files.list(place)) {
      assertThat(all).hasSize(2);
    }
  }

  @Test
  void itsFilesMayBeReadByAllWhoMayReadOtherFiles() throws IOException {
    assumeThat(Files.getFileStore(folder).supportsFileAttributeView("posix")).isTrue();
    Path usual = Files.writeString(folder.resolve("usual.txt"), "as others are written");

    assertThat(new OutFolder(folder).write(TWO)).isEmpty();

    assertThat(Files.getPosixFilePermissions(folder.resolve("a.csv")))
        .isEqualTo(Files.getPosixFilePermissions(usual));
  }

  @Test
  void holdsAllOfThemOrNone() throws IOException {
    Files.writeString(folder.resolve("a.csv"), "what was there");
    Files.createDirectory(folder.resolve("b.csv"));

    assertThat(new OutFolder(folder).write(TWO)).isPresent();

    assertThat(folder.resolve("a.csv")).hasContent("what was there");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).hasSize(2);
    }
  }

  @Test
  void isRefusedWhereAFileStands() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "mine");
    for (Path place : new Path[] {file, file.resolve("sheets/new")}) {
      assertThat(new OutFolder(place).refusal()).isPresent();
      assertThat(new OutFolder(place).write(TWO).orElseThrow().toString())
          .startsWith(place + ": found a folder that cannot be written to");
    }
    assertThat(file).hasContent("mine");
  }
}
