package io.frostlot.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** A folder that order sheets are written into, all of them or none. */
public record SheetFolder(Path folder) {

  /**
   * Writes NAME.csv for each sheet, over what is there.
   *
   * @param sheets text by name
   */
  public Optional<Problem> write(Map<String, String> sheets) {
    Map<Path, Path> moves = new LinkedHashMap<>();
    try {
      Files.createDirectories(folder);
      for (Map.Entry<String, String> sheet : sheets.entrySet()) {
        Path part = Files.createTempFile(folder, sheet.getKey(), ".part");
        moves.put(part, folder.resolve(sheet.getKey() + ".csv"));
        Files.writeString(part, sheet.getValue(), StandardCharsets.UTF_8);
      }
      for (Map.Entry<Path, Path> move : moves.entrySet()) {
        Files.move(move.getKey(), move.getValue(), StandardCopyOption.REPLACE_EXISTING);
      }
      return Optional.empty();
    } catch (IOException e) {
      moves.keySet().forEach(SheetFolder::remove);
      return Optional.of(
          new Problem(
              Where.file(folder.toString()),
              "a folder that order sheets cannot be written into",
              "a folder, or a name that is free",
              "Maybe it is a file, its permissions forbid it, or the disk is full."));
    }
  }

  private static void remove(Path part) {
    try {
      Files.deleteIfExists(part);
    } catch (IOException e) {
      part.toFile().deleteOnExit();
    }
  }
}
