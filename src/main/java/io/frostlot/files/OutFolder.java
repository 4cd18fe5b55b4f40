package io.frostlot.files;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** A folder that files are written into, all of them or none; made where it is missing. */
public record OutFolder(Path folder) {

  /** Why it cannot be written to, as far as that can be told before there is anything to write. */
  public Optional<Problem> refusal() {
    Path there = folder.toAbsolutePath().normalize();
    while (!TextFile.isThere(there) && there.getParent() != null) {
      there = there.getParent();
    }
    return Files.isDirectory(there) && Files.isWritable(there)
        ? Optional.empty()
        : Optional.of(refused());
  }

  /**
   * Writes files over what is there.
   *
   * @param texts by name
   */
  public Optional<Problem> write(Map<String, String> texts) {
    Map<WholeFile, Path> parts = new LinkedHashMap<>();
    try {
      Files.createDirectories(folder);
      for (Map.Entry<String, String> text : texts.entrySet()) {
        WholeFile file = new WholeFile(folder.resolve(text.getKey()));
        if (Files.isDirectory(file.path())) {
          throw new FileAlreadyExistsException(file.path().toString());
        }
        Path part = file.part();
        parts.put(file, part);
        file.fill(part, text.getValue());
      }
      for (Map.Entry<WholeFile, Path> part : parts.entrySet()) {
        part.getKey().take(part.getValue());
      }
      return Optional.empty();
    } catch (IOException e) {
      parts.values().forEach(part -> part.toFile().delete());
      return Optional.of(refused());
    }
  }

  private Problem refused() {
    return new Problem(
        Where.file(folder.toString()),
        "a folder that cannot be written to",
        "a folder, or a name that is free",
        "Maybe it is a file, its permissions forbid it, or the disk is full.");
  }
}
