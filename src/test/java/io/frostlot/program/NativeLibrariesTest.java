package io.frostlot.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.linearsolver.MPSolver;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NativeLibrariesTest {
  @TempDir Path cache;

  @Test
  void libraries_are_unpacked_once_and_nothing_else_is_left() throws IOException {
    Path kept = NativeLibraries.kept(cache).orElseThrow();
    Path library = kept.resolve(System.mapLibraryName("jniortools"));
    FileTime longAgo = FileTime.from(Instant.parse("2030-01-01T00:00:00Z"));
    Files.setLastModifiedTime(library, longAgo);

    assertThat(NativeLibraries.kept(cache)).contains(kept);
    assertThat(Files.getLastModifiedTime(library)).isEqualTo(longAgo);
    assertThat(cache).isDirectoryContaining(kept::equals);
    assertThat(cache.toFile().list()).hasSize(1);
  }

  @Test
  void a_cache_that_cannot_be_written_is_done_without() throws IOException {
    Path file = Files.writeString(cache.resolve("file"), "");

    assertThat(NativeLibraries.kept(file)).isEmpty();
    assertThat(NativeLibraries.kept(Path.of("?", ".cache"))).isEmpty();
  }

  @Test
  void the_solver_is_there_once_they_are_loaded() {
    NativeLibraries.load();
    NativeLibraries.load();

    assertThat(MPSolver.createSolver("SCIP")).isNotNull();
  }
}
