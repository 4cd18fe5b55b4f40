package io.frostlot.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;

/** The sample folder that can be read, and copies of it to be spoilt. */
public final class Samples {
  private Samples() {}

  static Path folder(String name) {
    try {
      return Path.of(Samples.class.getResource("/io/frostlot/files/" + name).toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Every file in and below a folder. */
  static List<Path> files(Path folder) {
    try (Stream<Path> paths = Files.walk(folder)) {
      return paths.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Copies a folder over another; files of the same name are replaced. */
  public static void copy(Path from, Path to) {
    try {
      for (Path file : files(from)) {
        Path target = to.resolve(from.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target, StandardCopyOption.REPLACE_EXISTING);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Path goodCopy(Path into) {
    copy(folder("good"), into);
    return into;
  }

  static Reading.Accepted accepted(Reading reading) {
    if (reading instanceof Reading.Refused refused) {
      throw new AssertionError(String.join("\n", messages(refused)));
    }
    return (Reading.Accepted) reading;
  }

  static List<String> messages(Reading reading) {
    return reading instanceof Reading.Refused refused
        ? refused.problems().stream().map(Problem::toString).toList()
        : List.of();
  }

  static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
