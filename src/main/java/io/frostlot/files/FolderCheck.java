package io.frostlot.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Is a folder the one that was meant?
 *
 * @param file that it must hold
 * @param expected such a folder in words
 * @param other file of the other kind of folder, which may have been taken for it
 * @param hint what the other kind is for
 */
record FolderCheck(String file, String expected, String other, String hint) {
  static final FolderCheck SCENARIO =
      new FolderCheck(
          "scenario.json",
          "a scenario folder",
          "group.json",
          "Keepers who order together are planned with share; each one's own folder lies within.");

  static final FolderCheck GROUP =
      new FolderCheck(
          "group.json",
          "a group folder",
          "scenario.json",
          "What one keeper orders is planned with plan.");

  /** What is wrong with it as a whole; the file itself may still be missing. */
  Optional<Problem> problem(Path folder) {
    if (!Files.isDirectory(folder)) {
      return wrong(folder, TextFile.isThere(folder) ? "a file" : "no such folder", "");
    }
    return !isThere(folder, file) && isThere(folder, other)
        ? wrong(folder, other + " and no " + file, hint)
        : Optional.empty();
  }

  /** The same, and that the file is missing. */
  Optional<Problem> problemOrMissing(Path folder) {
    Optional<Problem> problem = problem(folder);
    return problem.isPresent() || isThere(folder, file) ? problem : wrong(folder, "no " + file, "");
  }

  private Optional<Problem> wrong(Path folder, String found, String why) {
    return Optional.of(new Problem(Where.file(folder.toString()), found, expected, why));
  }

  private static boolean isThere(Path folder, String name) {
    return TextFile.isThere(folder.resolve(name));
  }
}
