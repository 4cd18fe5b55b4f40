package io.frostlot.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WholeFileTest {
  @TempDir private Path folder;

  @Test
  void writesOverWhatIsThereAndLeavesNothingElse() throws IOException {
    Path file = Files.writeString(folder.resolve("page.html"), "what was there");

    assertThat(new WholeFile(file).write("new")).isEmpty();

    assertThat(file).hasContent("new");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).containsExactly(file);
    }
  }

  @Test
  void mayBeReadByAllWhoMayReadOtherFiles() throws IOException {
    assumeThat(Files.getFileStore(folder).supportsFileAttributeView("posix")).isTrue();
    Path usual = Files.writeString(folder.resolve("usual.txt"), "as others are written");
    Path file = folder.resolve("page.html");

    assertThat(new WholeFile(file).write("text")).isEmpty();

    assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(usual));
  }

  @Test
  void whatItsOwnerAloneMayReadStaysSo() throws IOException {
    Path file = Files.writeString(folder.resolve("ledger.csv"), "who owes whom");
    assumeThat(Files.getFileStore(folder).supportsFileAttributeView("posix")).isTrue();
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));

    assertThat(new WholeFile(file).write("more")).isEmpty();

    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-------");
  }

  @Test
  void refusesAFolderAndLeavesIt() throws IOException {
    Path sub = Files.createDirectory(folder.resolve("sub"));

    assertThat(new WholeFile(sub).refusal()).isPresent();
    assertThat(new WholeFile(sub).write("text")).isPresent();

    assertThat(sub).isEmptyDirectory();
  }
}
