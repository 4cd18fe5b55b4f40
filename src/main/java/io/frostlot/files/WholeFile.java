package io.frostlot.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Optional;
import java.util.UUID;

/** A file that is written whole or not at all. */
public record WholeFile(Path path) {

  /** Why it cannot be written, as far as that can be told before there is anything to write. */
  public Optional<Problem> refusal() {
    Path folder = path.toAbsolutePath().getParent();
    return folder == null || Files.isDirectory(path) || !Files.isWritable(folder)
        ? Optional.of(refused())
        : Optional.empty();
  }

  /** Writes UTF-8 text over what is there; a problem where that cannot be. */
  public Optional<Problem> write(String text) {
    Path folder = path.toAbsolutePath().getParent();
    Optional<Path> part = Optional.empty();
    try {
      if (Files.isDirectory(path) || folder == null) {
        return Optional.of(refused());
      }
      part = Optional.of(part());
      fill(part.get(), text);
      take(part.get());
      return Optional.empty();
    } catch (IOException e) {
      part.ifPresent(left -> left.toFile().delete());
      return Optional.of(refused());
    }
  }

  /** A name beside it; not a temporary file: that would be readable by its owner alone. */
  Path part() {
    return path.resolveSibling("frostlot-" + UUID.randomUUID() + ".part");
  }

  /** Writes the text elsewhere first. */
  void fill(Path part, String text) throws IOException {
    Files.writeString(part, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
    keepPermissions(part);
  }

  /** What was written elsewhere is the file from now on. */
  void take(Path part) throws IOException {
    Files.move(part, path, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Those of what is written over, where there are such. */
  private void keepPermissions(Path part) throws IOException {
    PosixFileAttributeView before = Files.getFileAttributeView(path, PosixFileAttributeView.class);
    if (before != null && Files.exists(path)) {
      Files.setPosixFilePermissions(part, before.readAttributes().permissions());
    }
  }

  private Problem refused() {
    return new Problem(
        Where.file(path.toString()),
        "a place that cannot be written to",
        "a file in a folder that is there",
        "Maybe it is a folder, its permissions forbid it, or the disk is full.");
  }
}
